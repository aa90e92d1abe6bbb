using MudBlazor.Services;
using Practice.Service;
using Practice.Service.Demo;
using Practice.Service.Hosting;
using Practice.Web.Features.Account;
using Practice.Web.Features.Account.Begin;
using Practice.Web.Features.Account.Own;
using Practice.Web.Features.Clients.Privacy;
using Practice.Web.Features.Courses;
using Practice.Web.Features.Plans;
using Practice.Web.Features.Portal;
using Practice.Web.Features.Rehearsals;
using Practice.Web.Features.Settings;
using Practice.Web.Features.Settings.Audit;
using Practice.Web.Features.Tables;
using Practice.Web.Shell;

var builder = WebApplication.CreateBuilder(args);
builder.WebHost.UseStaticWebAssets(); // outside Development a run from source would find no style sheets

// comes up while the rest is put together
await using var database = RunningDatabase.Start(
    builder.Configuration,
    builder.Environment.ContentRootPath
);
builder.SetServerLimits();
builder.Services.AddPractice(database, PracticeSettings.From(builder.Configuration));
builder.Services.AddRazorComponents().AddInteractiveServerComponents();
builder.Services.AddMudServices();
builder.Services.AddSignInCookie();
builder.Services.AddDoorLimits();
builder.Services.AddSingleton<PlanLife>();
builder.Services.AddSingleton<CourseHandover>();
builder.Services.AddPhonePages(builder.Configuration);
builder.Services.AddSingleton<RehearsalDeskWork>();

var app = builder.Build();
app.UsePageSafety();
if (!app.Environment.IsDevelopment())
    app.UseExceptionHandler("/broken", createScopeForErrors: true).UseHsts();
app.UseStatusCodePagesWithReExecute("/not-found", createScopeForStatusCodePages: true);
app.UseFirstRun();
app.UseAuthentication();
app.UseAuthorization();
app.UseAntiforgery();
app.UsePhonePages();

app.MapStaticAssets().AllowAnonymous();
app.MapHealthChecks("/healthz").AllowAnonymous();
app.MapSignOut();
app.MapPasskeyQuestions();
app.MapLogo();
app.MapAudit();
app.MapTemplates();
app.MapClientExport();
app.MapPapers();
app.MapRehearsalPapers();
app.MapPhonePages();
app.MapRazorComponents<App>()
    .AddInteractiveServerRenderMode(circuits =>
        circuits.ContentSecurityFrameAncestorsPolicy = null
    ); // PageSafety says it

await database.ReadyAsync();
if (await app.RunCommand(args) is { } ended)
    return ended;
await using (var start = app.Services.CreateAsyncScope())
    await start.ServiceProvider.GetRequiredService<DemoPractice>().EnsureAsync(default);
await app.SayWelcome();
await app.RunAsync();
return 0;
