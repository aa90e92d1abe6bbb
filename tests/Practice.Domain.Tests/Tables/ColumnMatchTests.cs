using System.Collections.Immutable;
using Practice.Domain.Foods.Own;
using Practice.Domain.Tables;

namespace Practice.Domain.Tests.Tables;

/// <summary>Columns are guessed from what tables call them; her word stands over the guess.</summary>
public sealed class ColumnMatchTests
{
    [Theory]
    [InlineData("Name", "Name")]
    [InlineData("PRODUCT", "Name")]
    [InlineData("Energy (kcal)", "Energy")]
    [InlineData("Carbohydrate, g", "Carbohydrate")]
    [InlineData("Carbs per 100 g", "Carbohydrate")]
    [InlineData("of which sugars (g)", "Sugars")]
    [InlineData("Fiber", "Fibre")]
    [InlineData("Salt (g/100g)", "Salt")]
    [InlineData("Contains", "Allergens")]
    [InlineData("Shelf", null)]
    [InlineData("g", null)]
    public void A_column_is_guessed_from_its_heading(string heading, string? key) =>
        Assert.Equal(key, Guess(heading).Keys[0]);

    [Fact]
    public void No_two_columns_are_guessed_as_the_same_and_the_exact_heading_goes_first() =>
        Assert.Equal([null, "Name"], Guess("Description", "Name").Keys);

    [Fact]
    public void The_template_is_matched_whole() =>
        Assert.Equal(
            FoodColumns.All.Select(c => (string?)c.Key),
            Guess([.. FoodColumns.All.Select(c => c.Name)]).Keys
        );

    [Fact]
    public void What_is_missing_and_what_is_there_twice_is_told()
    {
        var match = Guess([.. FoodColumns.All.Select(c => c.Name)]);
        Assert.Empty(match.Problems(FoodColumns.All));
        Assert.Contains(
            "No column is read as Name.",
            match.With(match.ColumnOf("Name")!.Value, null).Problems(FoodColumns.All)
        );
        Assert.Contains(
            "More than one column is read as Name.",
            match.With(match.ColumnOf("Fat")!.Value, "Name").Problems(FoodColumns.All)
        );
    }

    private static ColumnMatch Guess(params ImmutableArray<string> headings) =>
        ColumnMatch.Guess(headings, FoodColumns.All);
}
