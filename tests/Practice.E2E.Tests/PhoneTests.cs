using Microsoft.Playwright;
using Practice.E2E.Tests.Browsing;
using Practice.E2E.Tests.MainJob;
using static Microsoft.Playwright.Assertions;

namespace Practice.E2E.Tests;

/// <summary>The practitioner's screens in a hand.</summary>
[Collection(AppCollection.Name)]
public sealed class PhoneTests(AppFixture app)
{
    [Fact]
    public async Task No_screen_is_wider_than_a_phone()
    {
        await using var visit = await app.Practitioner(Look.Phone);
        var places = await app.DemoClient();
        var wider = new List<string>();
        foreach (var screen in Screens.Inside)
        {
            await visit.Go(Screens.Address(screen, places));
            var beyond = await visit.Page.EvaluateAsync<int>(
                "document.documentElement.scrollWidth - innerWidth"
            );
            if (beyond > 0)
                wider.Add($"{screen} by {beyond} px");
        }
        Assert.Empty(wider);
    }

    [Fact]
    public async Task From_the_clients_to_a_changed_plate_with_a_thumb()
    {
        await using var visit = await app.Practitioner(Look.Phone);
        var page = visit.Page;
        await visit.Go("/");
        await page.GetByRole(AriaRole.Navigation, new() { Name = "Main" })
            .GetByRole(AriaRole.Link, new() { Name = "Clients" })
            .TapAsync();
        // Today has links of the same name: they must be gone first
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Clients", Level = 1 }))
            .ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = Screens.DemoClient }).TapAsync();
        await page.GetByRole(AriaRole.Region, new() { Name = "Races" })
            .GetByRole(AriaRole.Link)
            .TapAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Open version" }).TapAsync();

        var bench = new Workbench(page);
        await bench.Appears();
        var day = (await bench.Read()).Days[^1];
        var occasion = day.Occasions[0];
        var plate = new Plate(day.Name, occasion.Name, occasion.Portions[0].Food);
        await bench.Lock(plate);
        Assert.True((await bench.Read(plate)).IsLocked);
        Assert.Empty(visit.Faults);
    }
}
