using Microsoft.Playwright;
using Practice.E2E.Tests.Browsing;

namespace Practice.E2E.Tests;

/// <summary>
/// The pictures of the documentation. Where PRACTICE_SCREENSHOTS names a folder they are taken before the first browser
/// test, while the demo practice is untouched:
/// <c>PRACTICE_SCREENSHOTS=$PWD/docs/images tests/Practice.E2E.Tests/bin/Debug/net10.0/Practice.E2E.Tests -class '*SignInTests'</c>
/// </summary>
internal static class Pictures
{
    /// <summary>Whose plan is made last: with it the demo practice stands.</summary>
    private const string LastDemoClient = "Yusuf Karaca";

    private static readonly string[] Shown =
    [
        "today",
        "clients",
        "client",
        "screening",
        "race",
        "workbench",
        "race-week",
        "rehearsal",
        "foods",
        "team",
        "audit",
    ];

    private static readonly (string Name, Look Look)[] Looks =
    [
        ("desktop-light", Look.Desktop),
        ("desktop-dark", Look.Desktop with { Scheme = ColorScheme.Dark }),
        ("phone-light", Look.Phone),
    ];

    /// <summary>Where they go; null when nobody asks for them.</summary>
    public static string? Folder => Environment.GetEnvironmentVariable("PRACTICE_SCREENSHOTS");

    public static async Task Take(AppFixture app, string folder)
    {
        var places = await app.DemoClient();
        await using (var visit = await app.Practitioner(Look.Desktop))
            await ClientPlaces.Of(visit, LastDemoClient);
        foreach (var (name, look) in Looks)
        {
            await using var visit = await app.Practitioner(look);
            foreach (var screen in Shown)
            {
                await visit.Go(Screens.Address(screen, places));
                await visit.Page.EvaluateAsync("document.fonts.ready");
                await visit.Page.ScreenshotAsync(
                    new() { Path = Path.Combine(folder, $"{screen}-{name}.png") }
                );
            }
        }
    }
}
