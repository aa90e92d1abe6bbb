using Microsoft.Playwright;
using Practice.E2E.Tests.Browsing;
using Practice.E2E.Tests.MainJob;
using static Microsoft.Playwright.Assertions;

namespace Practice.E2E.Tests.Rehearsals;

/// <summary>The loop between plan and gut, with two browsers at once: hers at the desk, the client's in a pocket.</summary>
[Collection(AppCollection.Name)]
public sealed class RehearsalLoopTests(AppFixture app)
{
    private const string Client = "Piotr Zalewski";
    private const float MakingMs = 180_000;

    [Fact]
    public async Task Booked_logged_without_signal_read_without_a_reload_and_the_plan_changed_by_it()
    {
        await using var desk = await app.Practitioner(Look.Desktop);
        await using var pocket = await app.Stranger(Look.Phone);
        var places = await ClientPlaces.Of(desk, Client);
        await desk.Go(places.Race);
        var rehearsal = await Book(desk.Page);
        var phone = new PhoneOfClient(pocket.Page);
        await phone.Open(await GiveLink(desk.Page));
        var (one, other) = await phone.TwoFoods();
        await Mistrust(desk.Page, one, other);

        // she waits on Today while the client logs in a dead spot
        await desk.Go("/");
        var onToday = desk.Page.Locator($"a[href='{rehearsal}']");
        await Expect(onToday).ToHaveCountAsync(0);
        await phone.LoseSignal();
        await phone.AteEverything();
        await phone.Felt("Nausea", 6);
        await phone.Send();
        await phone.Says("Kept on this phone, will be sent");
        await Expect(onToday).ToHaveCountAsync(0);
        await phone.FindSignal();
        await phone.Says("Sent");
        await Expect(onToday).ToBeVisibleAsync();

        await desk.Follow(onToday, "Full rehearsal");
        await Expect(desk.Page.Locator(".verdict")).ToContainTextAsync("The worst score was 6");
        await phone.Felt("Nausea", 7);
        await phone.Send();
        await phone.Says("Sent");
        await Expect(desk.Page.Locator(".verdict")).ToContainTextAsync("The worst score was 7");

        var suspect = await AcceptSwap(desk.Page, one, other);
        var bench = new Workbench(desk.Page);
        await desk.Follow(Link(desk.Page, "Open version 2"), "Loading plan");
        await bench.Appears();
        Assert.DoesNotContain((await bench.Read()).Portions, portion => portion.Food == suspect);
        Assert.Empty(desk.Faults);
    }

    /// <returns>Address of the rehearsal.</returns>
    private static async Task<string> Book(IPage page)
    {
        await page.GetByRole(AriaRole.Button, new() { Name = "Book full" }).ClickAsync();
        var booked = Rehearsals(page).Locator(".standing a");
        await Expect(booked).ToHaveCountAsync(1);
        var onTheLine = page.Locator(".race-line .level .trial");
        var before = await onTheLine.InnerTextAsync();
        await onTheLine.PressAsync("ArrowRight");
        await Expect(onTheLine).Not.ToHaveTextAsync(before);
        await onTheLine.PressAsync("ArrowLeft");
        await Expect(onTheLine).ToContainTextAsync(before.Split('\n')[^1]);
        return (await booked.GetAttributeAsync("href"))!;
    }

    private static async Task<string> GiveLink(IPage page)
    {
        await page.GetByRole(AriaRole.Button, new() { Name = "Give a link" }).ClickAsync();
        return await page.GetByLabel("Address of the phone pages").InputValueAsync();
    }

    /// <summary>Two foods gave trouble before: the trial will point at one and keep the other to tell them apart.</summary>
    private static async Task Mistrust(IPage page, params string[] foods)
    {
        await page.GetByRole(AriaRole.Button, new() { Name = "Long runs and blocked days" })
            .ClickAsync();
        foreach (var food in foods)
        {
            await page.GetByLabel("Find a food").FillAsync(food);
            await page.GetByRole(AriaRole.Option)
                .Filter(new() { Has = page.GetByText(food, new() { Exact = true }) })
                .ClickAsync();
            await Expect(
                    Rehearsals(page)
                        .GetByRole(AriaRole.Button, new() { Name = "Forget " })
                        .Locator("..")
                        .GetByText(food, new() { Exact = true })
                )
                .ToBeVisibleAsync();
        }
    }

    /// <returns>The food that goes: one of the two, and the other stays.</returns>
    private static async Task<string> AcceptSwap(IPage page, string one, string other)
    {
        ILocator Accept(string food) =>
            page.GetByRole(AriaRole.Button, new() { Name = $"Accept: Another food for {food}" });
        await Expect(Accept(one).Or(Accept(other))).ToHaveCountAsync(1);
        var food = await Accept(one).CountAsync() > 0 ? one : other;
        await Accept(food).ClickAsync();
        await page.GetByLabel("Why", new() { Exact = true }).FillAsync("One thing at a time");
        await page.GetByRole(AriaRole.Button, new() { Name = "Decide and make the new version" })
            .ClickAsync();
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "What changed in version 2" }))
            .ToBeVisibleAsync(new() { Timeout = MakingMs });
        var gone = page.Locator(".changes li")
            .Filter(new() { HasText = "Taken off" })
            .Filter(new() { HasText = food });
        await Expect(gone.First).ToBeVisibleAsync();
        await Expect(page.GetByText("One thing at a time")).ToBeVisibleAsync();
        return food;
    }

    private static ILocator Rehearsals(IPage page) =>
        page.GetByRole(AriaRole.Region, new() { Name = "Rehearsals" });

    private static ILocator Link(IPage page, string name) =>
        page.GetByRole(AriaRole.Link, new() { Name = name });
}
