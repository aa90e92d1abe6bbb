using Microsoft.Playwright;
using Practice.E2E.Tests.Browsing;
using Practice.E2E.Tests.MainJob;
using static Microsoft.Playwright.Assertions;

namespace Practice.E2E.Tests;

/// <summary>A hold stands until somebody who may has lifted it.</summary>
[Collection(AppCollection.Name)]
public sealed class HoldTests(AppFixture app)
{
    [Fact]
    public async Task A_plan_for_type_1_diabetes_is_issued_only_after_its_clearance()
    {
        await using var visit = await app.Practitioner(Look.Desktop);
        var page = visit.Page;
        var care = new CareTaking(visit);
        var bench = new Workbench(page);
        await care.TakeIntoCare("Imre", "Castellane", "74");
        await care.Screen("Do you have diabetes", "Yes, type 1");
        await care.EnterMarathon(
            "Saltmere Winter Marathon",
            DateTime.Today.AddDays(21).AddHours(9),
            "3:30:00"
        );
        await page.GetByRole(AriaRole.Button, new() { Name = "Build plan" }).ClickAsync();
        await bench.Appears();
        var plan = page.Url;

        var issue = page.GetByRole(AriaRole.Button, new() { Name = "Issue", Exact = true });
        var holds = page.GetByRole(AriaRole.Region, new() { Name = "Holds" });
        await Expect(issue).ToBeDisabledAsync();
        await Expect(holds).ToContainTextAsync("block");
        await Expect(holds).ToContainTextAsync("diabetes");

        await holds
            .GetByRole(AriaRole.Button, new() { Name = "Record a clearance" })
            .First.ClickAsync();
        await visit.Settle();
        await ClearAll(page);

        await visit.Go(plan);
        await Expect(holds).ToHaveCountAsync(0);
        await bench.Issue();
        Assert.Empty(visit.Faults);
    }

    private static async Task ClearAll(IPage page)
    {
        var buttons = page.GetByRole(AriaRole.Button, new() { Name = "Record a clearance" });
        await Expect(buttons.First).ToBeVisibleAsync();
        for (var left = await buttons.CountAsync(); left > 0; left--)
        {
            await buttons.First.ClickAsync();
            await page.GetByLabel("Cleared by").FillAsync("Dr Edda Marchetti");
            await page.GetByLabel("Profession").FillAsync("diabetologist");
            await page.GetByLabel("What was said")
                .FillAsync("May load; insulin is adjusted with the clinic beforehand.");
            await page.GetByRole(AriaRole.Button, new() { Name = "Record the clearance" })
                .ClickAsync();
            await Expect(buttons).ToHaveCountAsync(left - 1);
        }
        await Expect(page.GetByText("No hold stands")).ToBeVisibleAsync();
    }
}
