using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Practice.E2E.Tests.Browsing;

/// <summary>A person before the application, in a browser that forgets when she leaves.</summary>
public sealed class Visit : IAsyncDisposable
{
    // the machine may be busy building
    private const float PatienceMs = 30_000;

    private readonly IBrowserContext _context;
    private readonly List<string> _faults = [];
    private readonly List<string> _fetchedOutside = [];

    private Visit(IBrowserContext context, IPage page, Uri home)
    {
        _context = context;
        Page = page;
        context.Request += (_, request) =>
        {
            var address = new Uri(request.Url);
            if (address.Scheme is not ("data" or "blob") && address.Authority != home.Authority)
                _fetchedOutside.Add(request.Url);
        };
        context.Response += (_, response) =>
        {
            if (response.Status >= 400)
                _faults.Add($"{response.Status} {response.Url}");
        };
        page.PageError += (_, error) => _faults.Add(error);
        page.Console += (_, message) =>
        {
            if (message.Type == "error")
                _faults.Add(message.Text);
        };
    }

    public IPage Page { get; }

    /// <summary>What the pages fetched from anywhere but the application.</summary>
    public IReadOnlyList<string> FetchedOutside => _fetchedOutside;

    /// <summary>What the browser complained about.</summary>
    public IReadOnlyList<string> Faults => _faults;

    internal static async Task<Visit> Begin(IBrowser browser, Uri home, Look look, string? cookies)
    {
        var context = await browser.NewContextAsync(
            new BrowserNewContextOptions
            {
                BaseURL = home.ToString(),
                ViewportSize = new ViewportSize { Width = look.Width, Height = look.Height },
                ColorScheme = look.Scheme,
                HasTouch = look.IsTouch,
                IsMobile = look.IsTouch,
                JavaScriptEnabled = look.HasScript,
                ReducedMotion = ReducedMotion.Reduce,
                Locale = "en-GB",
                TimezoneId = "Europe/London",
                StorageState = cookies,
            }
        );
        context.SetDefaultTimeout(PatienceMs);
        SetDefaultExpectTimeout(PatienceMs);
        return new Visit(context, await context.NewPageAsync(), home);
    }

    /// <summary>Types an address.</summary>
    public async Task Go(string address)
    {
        await Page.GotoAsync(address);
        await Settle();
    }

    /// <summary>Follows a link, or presses what leads elsewhere, to a page of that heading.</summary>
    public async Task Follow(ILocator link, string heading)
    {
        await link.ClickAsync();
        await Expect(Page.GetByRole(AriaRole.Heading, new() { Name = heading, Level = 1 }))
            .ToBeVisibleAsync();
        await Settle();
    }

    /// <summary>Waits until the page answers: before its circuit stands a click is lost.</summary>
    public async Task Settle()
    {
        await Expect(Page.Locator("main")).ToBeVisibleAsync();
        if (await Page.Locator("main.plain").CountAsync() > 0)
            return;
        await Expect(Page.Locator("main[data-live]")).ToBeVisibleAsync();
        await Expect(Page.Locator("main .fetching")).ToHaveCountAsync(0);
        // long tables fetch their rows once they know their height
        await Expect(Page.Locator("main tbody:not(:has(td))")).ToHaveCountAsync(0);
    }

    /// <summary>Enters the demo practice from the sign-in page.</summary>
    public async Task OpenDemo()
    {
        await Page.GotoAsync("/sign-in");
        await Follow(
            Page.GetByRole(AriaRole.Button, new() { Name = "Open the demo practice" }),
            "Today"
        );
    }

    /// <summary>Dark screens instead of light ones, or light instead of dark; some pages leave it to the machine.</summary>
    public async Task SwitchTheme()
    {
        var names = new System.Text.RegularExpressions.Regex("^(Dark|Light) screens$");
        var button = Page.GetByRole(AriaRole.Button, new() { NameRegex = names });
        if (await button.CountAsync() == 0)
        {
            await Page.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Dark });
            return;
        }
        var before = await button.GetAttributeAsync("aria-label");
        await button.ClickAsync();
        await Expect(button).Not.ToHaveAttributeAsync("aria-label", before!);
    }

    /// <summary>What the browser would remember of her.</summary>
    internal Task<string> Cookies() => _context.StorageStateAsync();

    public ValueTask DisposeAsync() => _context.DisposeAsync();
}
