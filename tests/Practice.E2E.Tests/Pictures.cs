using Microsoft.Playwright;
using Practice.E2E.Tests.Browsing;

namespace Practice.E2E.Tests;

/// <summary>
/// The pictures of the documentation, written into the folder named in PRACTICE_SCREENSHOTS. Taken only when asked for:
/// <c>PRACTICE_SCREENSHOTS=$PWD/docs/images tests/Practice.E2E.Tests/bin/Debug/net10.0/Practice.E2E.Tests -class '*Pictures'
/// -explicit only</c>
/// </summary>
[Collection(AppCollection.Name)]
public sealed class Pictures(AppFixture app)
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
        "foods",
    ];

    private static readonly (string Name, Look Look)[] Looks =
    [
        ("desktop-light", Look.Desktop),
        ("desktop-dark", Look.Desktop with { Scheme = ColorScheme.Dark }),
        ("phone-light", Look.Phone),
    ];

    [Fact(Explicit = true)]
    public async Task Of_every_screen()
    {
        var folder = Environment.GetEnvironmentVariable("PRACTICE_SCREENSHOTS");
        Assert.False(string.IsNullOrEmpty(folder), "Name the folder in PRACTICE_SCREENSHOTS.");
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
