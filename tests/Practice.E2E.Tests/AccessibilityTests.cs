using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Practice.E2E.Tests.Browsing;
using static Microsoft.Playwright.Assertions;

namespace Practice.E2E.Tests;

/// <summary>Every screen for everybody: no finding of axe in light and dark, and nothing fetched from elsewhere.</summary>
[Collection(AppCollection.Name)]
public sealed class AccessibilityTests(AppFixture app)
{
    public static TheoryData<string> InsideScreens { get; } = [.. Screens.Inside];

    [Fact]
    public async Task The_sign_in_page_is_accessible()
    {
        await using var visit = await app.Stranger(Look.Desktop);
        await visit.Go("/sign-in");
        await FindNothing(visit);

        await visit.Page.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Dark });
        await FindNothing(visit);
    }

    [Theory]
    [MemberData(nameof(InsideScreens))]
    public async Task A_screen_is_accessible_and_fetches_from_nowhere_else(string screen)
    {
        await using var visit = await app.Practitioner(Look.Desktop);
        await visit.Go(Screens.Address(screen, await app.DemoClient()));
        await FindNothing(visit);

        await visit.SwitchTheme();
        await FindNothing(visit);
    }

    [Fact]
    public async Task What_opens_on_the_workbench_is_accessible()
    {
        await using var visit = await app.Practitioner(Look.Desktop);
        await visit.Go((await app.DemoClient()).Plan);
        var page = visit.Page;

        await page.GetByRole(AriaRole.Button, new() { Name = "Carbohydrate : why?" })
            .First.ClickAsync();
        await Expect(page.GetByRole(AriaRole.Dialog)).ToBeVisibleAsync();
        await FindNothing(visit);
        await page.GetByRole(AriaRole.Button, new() { Name = "Close" }).ClickAsync();

        await page.GetByRole(AriaRole.Button, new() { Name = "Add a food" }).First.ClickAsync();
        var choice = page.GetByRole(AriaRole.Dialog, new() { Name = "Add a food" });
        await Expect(choice.GetByRole(AriaRole.Listitem).First).ToBeVisibleAsync();
        await FindNothing(visit);
    }

    private static async Task FindNothing(Visit visit)
    {
        var findings = (await visit.Page.RunAxe()).Violations;
        Assert.True(findings.Length == 0, string.Join("\n", findings.Select(Say)));
        Assert.Empty(visit.FetchedOutside);
        Assert.Empty(visit.Faults);
    }

    private static string Say(AxeResultItem finding) =>
        $"{finding.Id}: {finding.Help}\n"
        + string.Join(
            "\n",
            finding.Nodes.Select(n => $"    {n.Html}\n        {n.Any.FirstOrDefault()?.Message}")
        );
}
