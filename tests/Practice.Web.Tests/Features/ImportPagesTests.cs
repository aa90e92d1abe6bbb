using AngleSharp.Dom;
using Bunit;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Forms;
using Microsoft.Extensions.DependencyInjection;
using Practice.Service.Clients;
using Practice.Service.Foods;
using Practice.TestSupport;
using Practice.Web.Features.Clients.Import;
using Practice.Web.Features.Foods.Import;

namespace Practice.Web.Tests.Features;

[Collection(DeskCollection.Name)]
public class ImportPagesTests(TestPractice practice)
    : DeskContext(practice),
        IClassFixture<TestPractice>
{
    private const string FoodHead =
        "Product,Energy,Carbs,Sugars,Fibre,Protein,Fat,Salt,Caffeine,Contains,Served as,Unit,Piece weight,Min,Max,Source\n";

    private const string Square =
        "Oven square,352,72,40,4,5,4,0.3,0,wheat,sweet bite,square,45,1,3,Label\n";

    [Fact]
    public async Task A_table_of_foods_is_guessed_shown_and_taken_in()
    {
        var page = Open<FoodImportPage>();
        Choose(page, FoodHead + Square);
        page.WaitForElement(".preview td");

        Assert.Contains("Oven square", page.Find(".preview").TextContent, Ordinal);
        Assert.Contains("1 to 3 squares of 45 g", page.Find(".preview").TextContent, Ordinal);
        await Button(page).ClickAsync();
        page.WaitForAssertion(() =>
            Assert.EndsWith(
                "/foods/ours",
                Services.GetRequiredService<NavigationManager>().Uri,
                Ordinal
            )
        );
        var foods = await Practice.Get<Larder>().Run(Practice.Practitioner, Cancel);
        Assert.Single(foods.Search("Oven square"));
    }

    [Fact]
    public void A_wrong_row_is_told_with_row_and_column_and_nothing_can_be_taken_in()
    {
        var page = Open<FoodImportPage>();
        Choose(
            page,
            FoodHead
                + Square.Replace("Oven", "Stone", Ordinal)
                + Square.Replace("Oven", "Mute", Ordinal).Replace("wheat", "", Ordinal)
        );
        page.WaitForElement(".faults li");

        var fault = Assert.Single(page.FindAll(".faults li")).TextContent;
        Assert.Contains("Row 3 · Contains", fault, Ordinal);
        Assert.True(Button(page).HasAttribute("disabled"));
        Assert.DoesNotContain("Mute square", page.Find(".preview").TextContent, Ordinal);
    }

    [Fact]
    public async Task What_she_matched_stands_when_another_column_is_still_missing()
    {
        var page = Open<FoodImportPage>();
        Choose(
            page,
            FoodHead.Replace("Contains", "Watch out", Ordinal)
                + Square.Replace("Oven", "Matched", Ordinal)
        );
        page.WaitForElement("#column-9");

        Assert.Contains("No column is read as Allergens.", page.Markup, Ordinal);
        Assert.Empty(page.FindAll(".preview"));
        await page.Find("#column-15").ChangeAsync("");
        await page.Find("#column-9").ChangeAsync("Allergens");
        page.WaitForElement(".preview td");
        Assert.Equal("", Chosen(page.Find("#column-15")));
        Assert.Equal("Allergens", Chosen(page.Find("#column-9")));
    }

    [Fact]
    public void A_file_that_is_no_table_is_refused_and_the_one_before_stays()
    {
        var page = Open<FoodImportPage>();
        Choose(page, FoodHead + Square.Replace("Oven", "Kept", Ordinal));
        page.WaitForElement(".preview td");
        Choose(page, "PK\u0003\u0004");
        page.WaitForElement(".refusal");
        Assert.Contains("Kept square", page.Find(".preview").TextContent, Ordinal);
    }

    [Fact]
    public async Task Clients_are_said_to_begin_unscreened_and_are_taken_into_care()
    {
        var page = Open<ClientImportPage>(desk: Practice.Assistant);
        Choose(
            page,
            "First name;Last name;Born;Sex;Height;Weight\nAda;Testwell;4.5.1990;f;170;61,5\n"
        );
        page.WaitForElement(".preview td");
        Assert.Contains("begin unscreened", page.Find(".unscreened").TextContent, Ordinal);
        await Button(page).ClickAsync();
        page.WaitForAssertion(() =>
            Assert.EndsWith(
                "/clients",
                Services.GetRequiredService<NavigationManager>().Uri,
                Ordinal
            )
        );
        Assert.Single(
            await Practice.Get<FindClients>().Run(Practice.Practitioner, "Testwell", Cancel)
        );
    }

    [Fact]
    public void An_assistant_imports_no_foods() =>
        Assert.Empty(Open<FoodImportPage>(desk: Practice.Assistant).FindAll("input[type=file]"));

    private static void Choose(IRenderedComponent<IComponent> page, string text) =>
        page.FindComponent<InputFile>()
            .UploadFiles(InputFileContent.CreateFromText(text, "table.csv"));

    private static IElement Button(IRenderedComponent<IComponent> page) =>
        page.Find(".take button");

    private static string? Chosen(IElement select) =>
        select.QuerySelector("option[selected]")?.GetAttribute("value");

    private const StringComparison Ordinal = StringComparison.Ordinal;
}
