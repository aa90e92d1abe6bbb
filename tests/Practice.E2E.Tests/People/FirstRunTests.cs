using Deque.AxeCore.Playwright;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using Practice.E2E.Tests.Browsing;
using Practice.Service.Hosting;
using static Microsoft.Playwright.Assertions;

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

        await Fill(page, "abcd-efgh-jkmn-pqrs");
        await Expect(page.GetByRole(AriaRole.Alert)).ToContainTextAsync("not the set-up code");

        await Fill(page, app.Services.GetRequiredService<SetUpCode>().Text);
        await Expect(Heading(page, "Today")).ToBeVisibleAsync();
        await visit.Go("/practice");
        await Expect(page.GetByText("Lindenhof Nutrition").First).ToBeVisibleAsync();

        await visit.Go("/begin");
        await Expect(Heading(page, "Today")).ToBeVisibleAsync();
        Assert.Empty(visit.Faults);
    }

    private static async Task Fill(IPage page, string code)
    {
        await page.GetByLabel("Set-up code").FillAsync(code);
        await page.GetByLabel("Name of the practice").FillAsync("Lindenhof Nutrition");
        await page.GetByLabel("Your name").FillAsync("Olive Owner");
        await page.GetByLabel("Your e-mail address").FillAsync("olive@lindenhof.example");
        await page.GetByLabel("Password").FillAsync("barley and lemon");
        await page.GetByRole(AriaRole.Button, new() { Name = "Found the practice" }).ClickAsync();
    }

    private static ILocator Heading(IPage page, string name) =>
        page.GetByRole(AriaRole.Heading, new() { Name = name, Level = 1 });
}
