using System.Collections.Immutable;
using Practice.Domain.Foods;
using Practice.Domain.Foods.Own;
using Practice.Domain.Tables;

namespace Practice.Domain.Tests.Foods.Own;

/// <summary>A row of a table becomes a food by the same questions that a form is asked.</summary>
public sealed class FoodColumnsTests
{
    [Fact]
    public void The_example_of_the_template_is_a_food_without_fault()
    {
        var (sheet, faults) = Read();
        Assert.Empty(faults);
        Assert.Equal(
            [Allergen.Wheat, Allergen.Oats, Allergen.Milk],
            Assert.NotNull(sheet.Allergens)
        );
        Assert.Equal(120, sheet.Per100G.SodiumMg);
        Assert.Equal(
            (0.5m, ServingStyle.Counted),
            (Food(sheet).Serving.UnitsPerStep, Food(sheet).Serving.Style)
        );
        Assert.Equal(FoodGroup.Snack, sheet.Group);
    }

    [Fact]
    public void Section_and_sittings_are_the_usual_ones_where_nobody_says()
    {
        var (sheet, faults) = Read(
            ("Section", ""),
            ("Served at", ""),
            ("Served as", "rice"),
            ("Unit", "g"),
            ("Units", ""),
            ("Smallest helping", "100"),
            ("Largest helping", "250")
        );
        Assert.Empty(faults);
        Assert.Equal(FoodGroup.Starch, sheet.Group);
        Assert.Equal([OccasionKind.Lunch, OccasionKind.EveningMeal], sheet.Occasions);
    }

    [Theory]
    [InlineData("Allergens", "", "Empty: write what it holds, or none")]
    [InlineData("Allergens", "gluten", "“gluten” is not a word for this")]
    [InlineData("Allergens", "wheat, nuts", "“nuts” is not a word for this")]
    [InlineData("Energy, kcal", "a lot", "is not a number")]
    [InlineData("Served as", "snack", "“snack” is not a word for this")]
    [InlineData("Unit", "", "a word such as slice, or g, or ml")]
    [InlineData("Salt, g", "", "salt in g times 400", "Sodium, mg")]
    [InlineData("Fat, g", "60", "weigh 137.0 g", "Carbohydrate, g")]
    [InlineData("Diets", "sugary", "not certified gluten-free")]
    [InlineData("Largest helping", "3.2", "Whole and half pieces", "Smallest helping")]
    public void What_is_wrong_is_told_once_in_its_column(
        string column,
        string cell,
        string words,
        string? told = null
    )
    {
        var fault = Assert.Single(Read((column, cell)).Faults, f => !f.IsWarning);
        Assert.Equal((2, told ?? column), (fault.Row, fault.Column));
        Assert.Contains(words, fault.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void None_is_an_answer_about_allergens()
    {
        var (sheet, _) = Read(("Allergens", "None"), ("Name", "Fig square"), ("Diets", ""));
        Assert.Empty(Assert.NotNull(sheet.Allergens));
    }

    [Fact]
    public void Measures_are_read_by_name_and_grams()
    {
        var (sheet, faults) = Read(
            ("Unit", "g"),
            ("Units", ""),
            ("Smallest helping", "50"),
            ("Largest helping", "200"),
            ("Household measures", "blue bowl=220; ladle = 90,5")
        );
        Assert.Empty(faults);
        Assert.Equal(
            [("blue bowl", 220m), ("ladle", 90.5m)],
            sheet.Serving.Measures.Select(m => (m.Name, m.Grams))
        );
    }

    private static Food Food(FoodSheet sheet) => OwnFood.Of(Guid.NewGuid(), sheet).Food;

    /// <summary>The example row with some cells changed.</summary>
    private static (FoodSheet Sheet, ImmutableArray<RowFault> Faults) Read(
        params ImmutableArray<(string Column, string Cell)> changes
    )
    {
        var cells = FoodColumns.All.Select(c =>
            changes
                .Where(change => change.Column == c.Name)
                .Select(change => change.Cell)
                .FirstOrDefault(c.Example)
        );
        var table = new ImportTable(
            [.. FoodColumns.All.Select(c => c.Name)],
            [new ImportRow(2, [.. cells])]
        );
        var reader = new RowReader(
            table,
            ColumnMatch.Guess(table.Columns, FoodColumns.All),
            table.Rows[0],
            FoodColumns.All
        );
        return (FoodColumns.Read(reader), reader.Faults);
    }
}
