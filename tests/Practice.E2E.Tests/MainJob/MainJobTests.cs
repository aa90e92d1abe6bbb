using Microsoft.Playwright;
using Practice.Domain.Foods;
using Practice.E2E.Tests.Browsing;
using UglyToad.PdfPig.Content;
using static Microsoft.Playwright.Assertions;

namespace Practice.E2E.Tests.MainJob;

/// <summary>The job the tool is for, from the first word about a client to the paper in her hand.</summary>
[Collection(AppCollection.Name)]
public sealed class MainJobTests(AppFixture app)
{
    private const string Client = "Hedda Winterbourne";
    private const string Race = "Saltmere Winter Marathon";

    [Fact]
    public async Task From_a_new_client_with_coeliac_disease_to_the_plan_on_paper()
    {
        await using var visit = await app.Stranger(Look.Desktop);
        await visit.OpenDemo();
        var page = visit.Page;
        var care = new CareTaking(visit);
        var bench = new Workbench(page);

        await care.TakeIntoCare("Hedda", "Winterbourne", "61.5");
        await care.Screen("Do you have coeliac disease?", "Yes");
        await care.EnterMarathon(Race, DateTime.Today.AddDays(21).AddHours(9), "3:40:00");
        await SeeWhyOf(page, "Carbohydrate, full day");

        await page.GetByRole(AriaRole.Button, new() { Name = "Build plan" }).ClickAsync();
        await bench.Appears();
        var built = await bench.Read();
        Assert.True(built.Days.Count >= 2, "A marathon is loaded for on two days at least.");
        Assert.All(built.Days, day => Assert.NotEmpty(day.Occasions));
        Assert.All(
            built.Days.SelectMany(day => day.Occasions),
            occasion => Assert.NotEmpty(occasion.Portions)
        );
        Assert.All(built.Portions, HoldsNoGluten);

        var (stepped, swapped) = await Edit(bench, built);
        await Rebalance(bench, stepped, swapped);
        await bench.Issue();

        var issued = await bench.Read();
        Assert.All(issued.Portions, HoldsNoGluten);
        var paper = PlanOnPaper.Read(await bench.Download());
        Assert.Equal(PageSize.A4, paper.Size);
        paper.Names(Client);
        paper.Names(Race);
        paper.Says(issued);
        Assert.Empty(visit.Faults);
    }

    private static async Task SeeWhyOf(IPage page, string target)
    {
        await page.GetByRole(AriaRole.Button, new() { Name = target }).ClickAsync();
        var why = page.GetByRole(AriaRole.Dialog, new() { Name = $"Why: {target}" });
        await Expect(why).ToContainTextAsync("61.5 kg");
        await why.GetByRole(AriaRole.Button, new() { Name = "Close" }).ClickAsync();
        await Expect(why).ToBeHiddenAsync();
    }

    private static void HoldsNoGluten(PortionOnScreen portion) =>
        Assert.True(
            FoodLibrary.Standard.All.Single(food => food.Name == portion.Food).IsGlutenFree,
            $"{portion.Food} may hold gluten."
        );

    /// <summary>Steps one food, locks it, and swaps another.</summary>
    private static async Task<(Plate Stepped, Plate Swapped)> Edit(
        Workbench bench,
        PlanOnScreen built
    )
    {
        var day = built.Days.MaxBy(d => d.Occasions.Count)!;
        var plates = (
            from occasion in day.Occasions
            from portion in occasion.Portions
            select new Plate(day.Name, occasion.Name, portion.Food)
        ).ToList();

        var stepped = await First(
            plates.OrderByDescending(plate => int.Parse(built[plate].Grams, null)),
            bench.CanStep
        );
        await bench.Step(stepped);
        Assert.NotEqual(built[stepped], await bench.Read(stepped));
        await bench.Lock(stepped);

        foreach (var plate in plates.Where(plate => plate != stepped))
            if (await bench.Swap(plate) is { } swapped)
                return (stepped, swapped);
        throw new InvalidOperationException("No food of the day can be swapped.");
    }

    private static async Task Rebalance(Workbench bench, Plate locked, Plate swapped)
    {
        var before = await bench.Read();
        var kept = await bench.Read(locked);
        Assert.True(kept.IsLocked);
        await bench.Read(swapped);

        var changes = await bench.Rebalance(locked.Day);
        var after = await bench.Read();
        Assert.NotEmpty(changes);
        Assert.Equal(kept.Amount, (await bench.Read(locked)).Amount);

        await bench.Undo();
        await bench.StandsAs(before);
        await bench.Redo();
        await bench.StandsAs(after);
    }

    private static async Task<Plate> First(IEnumerable<Plate> plates, Func<Plate, Task<bool>> where)
    {
        foreach (var plate in plates)
            if (await where(plate))
                return plate;
        throw new InvalidOperationException("No such plate.");
    }
}
