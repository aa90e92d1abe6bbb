using MudBlazor.Services;
using NodaTime;
using Practice.Web.Shell;

var builder = WebApplication.CreateBuilder(args);
builder.WebHost.UseStaticWebAssets(); // outside Development a run from source would find no style sheets

builder.Services.AddRazorComponents().AddInteractiveServerComponents();
builder.Services.AddMudServices();
builder.Services.AddSingleton<IClock>(SystemClock.Instance);

var app = builder.Build();

app.UseStatusCodePagesWithReExecute("/not-found", createScopeForStatusCodePages: true);
app.UseAntiforgery();
app.MapStaticAssets();
app.MapRazorComponents<App>().AddInteractiveServerRenderMode();

await app.RunAsync();
