using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using Practice.E2E.Tests.Browsing;
using Practice.Service.Demo;
using Practice.TestSupport;

[assembly: AssemblyFixture(typeof(PostgresServer))]

namespace Practice.E2E.Tests;

/// <summary>Tests that look at the application through a browser.</summary>
[CollectionDefinition(Name)]
public sealed class AppCollection : ICollectionFixture<AppFixture>
{
    public const string Name = "app";
}

/// <summary>The application on a real port, with the demo practice in a database of its own, and a browser to look at it.</summary>
public class AppFixture(PostgresServer server) : WebApplicationFactory<Program>, IAsyncLifetime
{
    private string _database = "";
    private IPlaywright? _playwright;
    private IBrowser? _browser;
    private string? _signedIn;
    private ClientPlaces? _demoClient;

    /// <summary>Where the application answers.</summary>
    private string Address { get; set; } = "";

    /// <summary>Whether the empty database becomes the demo practice.</summary>
    protected virtual bool IsDemo => true;

    /// <summary>Whether somebody looks at it; requests can be sent without.</summary>
    protected virtual bool HasBrowser => true;

    /// <summary>Where letters land, each a file.</summary>
    public string MailFolder { get; } =
        Path.Combine(Path.GetTempPath(), "practice-mail", Guid.NewGuid().ToString("N"));

    public async ValueTask InitializeAsync()
    {
        _database = await server.NewDatabaseAsync();
        UseKestrel(0);
        StartServer();
        Address = ClientOptions.BaseAddress.ToString();
        if (!HasBrowser || await Chromium.FindAsync() is not { } program)
            return;
        // a practice at rest: its plans are made behind the first page
        while (!Services.GetRequiredService<DemoPlans>().IsDone)
            await Task.Delay(TimeSpan.FromSeconds(1));
        _playwright = await Playwright.CreateAsync();
        _browser = await _playwright.Chromium.LaunchAsync(
            new BrowserTypeLaunchOptions { ExecutablePath = program, ChromiumSandbox = false }
        );
        if (Pictures.Folder is { Length: > 0 } folder)
            await Pictures.Take(this, folder);
    }

    protected override void ConfigureWebHost(IWebHostBuilder builder)
    {
        ArgumentNullException.ThrowIfNull(builder);
        // scopes are validated in Development only
        builder.UseEnvironment("Development");
        // these arrive as command-line arguments: Program reads them before it builds the host
        builder.UseSetting("ConnectionStrings:Practice", _database);
        builder.UseSetting("Logging:LogLevel:Default", "Warning");
        builder.UseSetting("Demo:Enabled", IsDemo ? "true" : "false");
        builder.UseSetting("Mail:Folder", MailFolder);
        builder.UseSetting("Practice:TimeZone", "Europe/London");
    }

    /// <summary>Somebody who is not signed in comes to the application.</summary>
    public Task<Visit> Stranger(Look look) => Come(look, null);

    /// <summary>The demo practitioner comes back to the application, still signed in.</summary>
    public async Task<Visit> Practitioner(Look look)
    {
        if (_signedIn is null)
        {
            await using var visit = await Stranger(look);
            await visit.OpenDemo();
            _signedIn = await visit.Cookies();
        }
        return await Come(look, _signedIn);
    }

    /// <summary>Where the screens of <see cref="Screens.DemoClient"/> are, plan and all.</summary>
    public async Task<ClientPlaces> DemoClient()
    {
        if (_demoClient is null)
        {
            await using var visit = await Practitioner(Look.Desktop);
            await ClientPlaces.Of(visit, Screens.NextDemoClient);
            _demoClient = await ClientPlaces.Of(visit, Screens.DemoClient);
        }
        return _demoClient;
    }

    private Task<Visit> Come(Look look, string? cookies)
    {
        Assert.SkipWhen(_browser is null, Chromium.Missing);
        return Visit.Begin(_browser, new Uri(Address), look, cookies);
    }

    public override async ValueTask DisposeAsync()
    {
        if (_browser is not null)
            await _browser.DisposeAsync();
        _playwright?.Dispose();
        await base.DisposeAsync();
        await server.DropAsync(_database);
        if (Directory.Exists(MailFolder))
            Directory.Delete(MailFolder, recursive: true);
        GC.SuppressFinalize(this);
    }
}
