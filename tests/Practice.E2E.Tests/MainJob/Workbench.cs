using System.Diagnostics;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Practice.E2E.Tests.MainJob;

/// <summary>A food on a plate, by what the screen calls it.</summary>
public sealed record Plate(string Day, string Occasion, string Food);

/// <summary>The workbench under her hands.</summary>
public sealed class Workbench(IPage page)
{
    private const float BuildingMs = 120_000;
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(20);

    private ILocator Changes =>
        page.GetByRole(AriaRole.Region, new() { Name = "What rebalancing changed" });

    private ILocator Choice => page.GetByRole(AriaRole.Dialog, new() { Name = "Instead of" });

    /// <summary>Waits for the plan that is being built, and until nothing makes it better any more.</summary>
    public async Task Appears()
    {
        var title = page.GetByRole(AriaRole.Heading, new() { Name = "Loading plan", Level = 1 });
        await Expect(title).ToBeVisibleAsync(new() { Timeout = BuildingMs });
        await page.WaitForURLAsync(
            address => !address.Contains("improve", StringComparison.Ordinal),
            new() { Timeout = BuildingMs }
        );
        await Expect(Button("Build anew")).ToBeEnabledAsync();
    }

    public Task<PlanOnScreen> Read() => PlanOnScreen.Read(page);

    public async Task<PortionOnScreen> Read(Plate plate)
    {
        ArgumentNullException.ThrowIfNull(plate);
        return (await Read())[plate];
    }

    public Task<bool> CanStep(Plate plate)
    {
        ArgumentNullException.ThrowIfNull(plate);
        return On(plate, $"More {plate.Food}").IsEnabledAsync();
    }

    /// <summary>One step more of a food.</summary>
    public async Task Step(Plate plate)
    {
        ArgumentNullException.ThrowIfNull(plate);
        var before = await Read(plate);
        await On(plate, $"More {plate.Food}").ClickAsync();
        await Until(async () => await Read(plate) != before);
        await Saved();
    }

    public async Task Lock(Plate plate)
    {
        await On(plate, $"Lock {plate.Food}").ClickAsync();
        await Expect(On(plate, $"Lock {plate.Food}")).ToHaveAttributeAsync("aria-pressed", "true");
        await Saved();
    }

    /// <returns>What was taken instead; null where nothing else is offered.</returns>
    public async Task<Plate?> Swap(Plate plate)
    {
        await On(plate, $"Swap {plate.Food}").ClickAsync();
        await Expect(Choice).ToBeVisibleAsync();
        await Expect(Choice.Locator(".fetching")).ToHaveCountAsync(0);
        var offers = Choice.GetByRole(AriaRole.Listitem);
        if (await offers.CountAsync() == 0)
        {
            await Choice.GetByRole(AriaRole.Button, new() { Name = "Close" }).ClickAsync();
            return null;
        }
        var instead = await offers.First.Locator(".name").InnerTextAsync();
        await offers.First.GetByRole(AriaRole.Button).ClickAsync();
        await Expect(Choice).ToHaveCountAsync(0);
        await Saved();
        return plate with { Food = instead };
    }

    /// <returns>What it says it changed, line by line.</returns>
    public async Task<IReadOnlyList<string>> Rebalance(string day)
    {
        await Day(day).GetByRole(AriaRole.Button, new() { Name = "Rebalance" }).ClickAsync();
        await Expect(Changes).ToBeVisibleAsync(new() { Timeout = BuildingMs });
        await Saved();
        return await Changes.GetByRole(AriaRole.Listitem).AllInnerTextsAsync();
    }

    public Task Undo() => Button("Undo").ClickAsync();

    public Task Redo() => Button("Redo").ClickAsync();

    /// <summary>Waits until the plates stand as they once did.</summary>
    public async Task StandsAs(PlanOnScreen plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        await Until(async () => (await Read()).Lines.SequenceEqual(plan.Lines));
        Assert.Equal(plan.Lines, (await Read()).Lines);
        await Saved();
    }

    public async Task Issue(string by = "Robin Larkfield")
    {
        await Button("Issue").ClickAsync();
        await Expect(page.GetByText($"issued by {by}")).ToBeVisibleAsync();
    }

    /// <returns>The A4 handout.</returns>
    public async Task<byte[]> Download()
    {
        await Button("Paper").ClickAsync();
        var file = await page.RunAndWaitForDownloadAsync(() =>
            page.GetByRole(AriaRole.Link, new() { Name = "Loading plan, A4", Exact = true })
                .ClickAsync()
        );
        return await File.ReadAllBytesAsync(await file.PathAsync());
    }

    /// <summary>What is on the screen is on file too. Right only once the edit shows: before it, the last one is saved.</summary>
    private Task Saved() =>
        Expect(page.GetByRole(AriaRole.Status).Filter(new() { HasText = "Saved" }))
            .ToBeVisibleAsync();

    private static async Task Until(Func<Task<bool>> holds)
    {
        var started = Stopwatch.GetTimestamp();
        while (!await holds() && Stopwatch.GetElapsedTime(started) < Patience)
            await Task.Delay(100, TestContext.Current.CancellationToken);
    }

    private ILocator Button(string name) =>
        page.GetByRole(AriaRole.Button, new() { Name = name, Exact = true });

    private ILocator Day(string day) =>
        page.GetByRole(AriaRole.Region, new() { Name = day, Exact = true });

    private ILocator On(Plate plate, string button) =>
        Row(plate).GetByRole(AriaRole.Button, new() { Name = button, Exact = true });

    private ILocator Row(Plate plate) =>
        Day(plate.Day)
            .GetByRole(AriaRole.Article, new() { Name = plate.Occasion, Exact = true })
            .GetByRole(AriaRole.Listitem)
            .Filter(
                new()
                {
                    Has = page.GetByRole(
                        AriaRole.Button,
                        new() { Name = $"Swap {plate.Food}", Exact = true }
                    ),
                }
            );
}
