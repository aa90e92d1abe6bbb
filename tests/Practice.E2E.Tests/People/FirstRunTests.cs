using Deque.AxeCore.Playwright;
using Microsoft.Extensions.DependencyInjection;
using Practice.E2E.Tests.Browsing;
using Practice.Service.Hosting;
using static Microsoft.Playwright.Assertions;
using static Practice.E2E.Tests.People.Owner;

namespace Practice.E2E.Tests.People;

/// <summary>A fresh installation, until somebody works there.</summary>
public sealed class FirstRunTests(FreshApp app) : IClassFixture<FreshApp>
{
    [Fact]
    public async Task Every_page_leads_to_founding_and_the_founder_becomes_the_owner()
    {
        await using var visit = await app.Stranger(Look.Desktop);
        var page = visit.Page;
        await visit.Go("/clients");
        await Expect(Heading(page, "Found your practice")).ToBeVisibleAsync();
        Assert.Empty((await page.RunAxe()).Violations);

        await Found(page, "abcd-efgh-jkmn-pqrs");
        await Expect(page.GetByRole(Microsoft.Playwright.AriaRole.Alert))
            .ToContainTextAsync("not the set-up code");

        await Found(page, app.Services.GetRequiredService<SetUpCode>().Text);
        await Expect(Heading(page, "Today")).ToBeVisibleAsync();
        await visit.Go("/practice");
        await Expect(page.GetByText("Lindenhof Nutrition").First).ToBeVisibleAsync();

        await visit.Go("/begin");
        await Expect(Heading(page, "Today")).ToBeVisibleAsync();
        Assert.Empty(visit.Faults);
    }
}
