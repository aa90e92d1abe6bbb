using System.Globalization;
using Microsoft.Playwright;
using Practice.E2E.Tests.Browsing;
using static Microsoft.Playwright.Assertions;

namespace Practice.E2E.Tests;

/// <summary>The race day of an issued plan: the card on paper, and on a phone that was online once.</summary>
[Collection(AppCollection.Name)]
public sealed class RaceDayTests(AppFixture app)
{
    private const string Runner = "Maren Holloway";

    [Fact]
    public async Task The_race_card_opens_without_signal_after_one_visit_and_says_what_comes_next()
    {
        await using var visit = await app.Practitioner(Look.Desktop);
        var places = await ClientPlaces.Of(visit, Runner);
        var card = await visit.Page.APIRequest.GetAsync(
            new Uri(new Uri(visit.Page.Url), $"{places.Plan}/paper?kind=Card").ToString()
        );
        Assert.Equal("application/pdf", card.Headers["content-type"]);

        await visit.Go(places.Race);
        await visit
            .Page.GetByRole(AriaRole.Button, new() { NameRegex = new("Give a(nother)? link") })
            .ClickAsync();
        var address = await visit.Page.GetByLabel("Address of the phone pages").InputValueAsync();

        await using var phone = await app.Stranger(Look.Phone);
        var page = phone.Page;
        await page.GotoAsync(address);
        var kept = new Uri(address).AbsolutePath + "/race";
        while (!await page.EvaluateAsync<bool>("async path => !!(await caches.match(path))", kept))
            await Task.Delay(250, TestContext.Current.CancellationToken);
        await page.Context.SetOfflineAsync(true);
        await page.GetByRole(AriaRole.Link, new() { Name = "Race card" }).TapAsync();

        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Race card" }))
            .ToBeVisibleAsync();
        await Expect(page.Locator("#by-clock")).ToContainTextAsync("First: ");
        var steps = await page.Locator("li[data-km]")
            .EvaluateAllAsync<string[]>("steps => steps.map(s => s.dataset.km)");
        var third = steps[2];
        await page.GetByLabel("I am at kilometre")
            .FillAsync(
                (decimal.Parse(third, CultureInfo.InvariantCulture) - 0.01m).ToString(
                    CultureInfo.InvariantCulture
                )
            );
        await Expect(page.Locator("#by-place")).ToContainTextAsync($"{third} km: ");
        await Expect(page.Locator("li[aria-current=step]")).ToHaveAttributeAsync("data-km", third);

        await page.GetByRole(AriaRole.Button, new() { Name = "I start now" }).TapAsync();
        await Expect(page.Locator("#started")).ToContainTextAsync("Started at");
    }
}
