using System.Text;
using Microsoft.Playwright;
using Practice.E2E.Tests.Browsing;
using static Microsoft.Playwright.Assertions;

namespace Practice.E2E.Tests;

/// <summary>A practice's own foods, from a spreadsheet's file to the plate of a client.</summary>
[Collection(AppCollection.Name)]
public sealed class ImportTests(AppFixture app)
{
    // semicolons and decimal commas, as spreadsheets in half of Europe write them
    private const string Table = """
        Product;Energy (kcal);Fat;Carbs;Sugars;Fibre;Protein;Salt;Caffeine;Contains;Served as;Unit;Piece weight;Min;Max;Source
        Walled-garden square;362;3,5;77;44;2,8;4;0,2;0;none;sweet bite;square;40;1;3;Label
        Forgotten loaf;250;2;50;4;3;9;1,1;0;;bread;slice;40;1;4;Label
        """;

    [Fact]
    public async Task A_table_of_foods_is_put_right_taken_in_and_offered_on_the_workbench()
    {
        await using var visit = await app.Practitioner(Look.Desktop);
        var page = visit.Page;
        await visit.Go("/foods/import");
        await Choose(page, Table);
        var faults = page.Locator(".faults");
        await Expect(faults).ToContainTextAsync("Row 3 · Contains");
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Serve 2 foods" }))
            .ToBeDisabledAsync();

        await Choose(page, Table.Replace("1,1;0;;", "1,1;0;wheat;", StringComparison.Ordinal));
        await Expect(faults).ToHaveCountAsync(0);
        await visit.Follow(
            page.GetByRole(AriaRole.Button, new() { Name = "Serve 2 foods" }),
            "Our foods"
        );
        await Expect(page.GetByRole(AriaRole.Link, new() { Name = "Walled-garden square" }))
            .ToBeVisibleAsync();

        await visit.Go((await app.DemoClient()).Plan);
        await page.GetByRole(AriaRole.Button, new() { Name = "Add a food" }).First.ClickAsync();
        var choice = page.GetByRole(AriaRole.Dialog, new() { Name = "Add a food" });
        await choice.GetByRole(AriaRole.Searchbox).FillAsync("walled-garden");
        await Expect(choice.GetByRole(AriaRole.Button, new() { Name = "Walled-garden square" }))
            .ToBeVisibleAsync();
        // the demo client has coeliac disease
        await choice.GetByRole(AriaRole.Searchbox).FillAsync("forgotten loaf");
        await Expect(choice.GetByText("No food of that name that this client may eat"))
            .ToBeVisibleAsync();

        // the next client's menu shall be the library's again
        foreach (var name in new[] { "Walled-garden square", "Forgotten loaf" })
            await Retire(visit, name);
        Assert.Empty(visit.Faults);
    }

    private static async Task Retire(Visit visit, string name)
    {
        await visit.Go("/foods/ours");
        await visit.Follow(visit.Page.GetByRole(AriaRole.Link, new() { Name = name }), name);
        await visit
            .Page.GetByRole(AriaRole.Button, new() { Name = "Retire", Exact = true })
            .ClickAsync();
        await Expect(visit.Page.GetByText("Retired: no menu gets it")).ToBeVisibleAsync();
    }

    private static Task Choose(IPage page, string table) =>
        page.Locator("input[type=file]")
            .SetInputFilesAsync(
                new FilePayload
                {
                    Name = "foods.csv",
                    MimeType = "text/csv",
                    Buffer = Encoding.UTF8.GetBytes(table),
                }
            );
}
