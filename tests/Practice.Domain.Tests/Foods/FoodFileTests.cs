using System.Collections.Immutable;
using System.Text;
using Practice.Domain.Foods;

namespace Practice.Domain.Tests.Foods;

/// <summary>A wrong row stops the program at start, naming the food and the field.</summary>
public sealed class FoodFileTests
{
    private const string Rice = """
        {"id": "rice", "name": "Rice", "group": "Starch", "family": "rice",
         "per100g": {"kcal": 130, "carb": 28, "sugars": 0, "fibre": 0.4, "protein": 2.7, "fat": 0.3, "sodium": 1, "potassium": 35, "water": 68},
         "serving": {"style": "Weighed", "step": 50, "per": 50, "unit": "g", "steps": [3, 4]},
         "roles": {"Rice": 50}, "occasions": ["Lunch"], "origin": {"dataset": "Test"}}
        """;

    [Fact]
    public void A_right_row_is_read()
    {
        var rice = Assert.Single(Read(Rice));
        Assert.Equal(28, rice.Per100G.CarbohydrateG);
        Assert.Null(rice.Per100G.SucroseG);
        Assert.Equal([3, 4], rice.Serving.Steps);
        Assert.Equal(new FoodRole(MealRole.Rice, 50), Assert.Single(rice.Roles));
        Assert.Equal(FoodTraits.None, rice.Traits);
    }

    [Theory]
    [InlineData("\"name\": \"Rice\"", "\"name\": \"\"", "name", "is not a text")]
    [InlineData("\"name\": \"Rice\", ", "", "name", "is missing")]
    [InlineData("\"carb\": 28, ", "", "per100g.carb", "is missing")]
    [InlineData("\"carb\": 28", "\"carb\": \"28\"", "per100g.carb", "is not a number")]
    [InlineData("\"carb\": 28", "\"carb\": 128", "per100g.carb", "is outside 0 to 100 g")]
    [InlineData("\"kcal\": 130", "\"kcal\": -1", "per100g.kcal", "is outside 0 to 900")]
    [InlineData("\"Starch\"", "\"Starchy\"", "group", "'Starchy' is not one of FoodGroup")]
    [InlineData(
        "\"Lunch\"",
        "\"Elevenses\"",
        "occasions",
        "'Elevenses' is not one of OccasionKind"
    )]
    [InlineData("[\"Lunch\"]", "[]", "occasions", "is empty")]
    [InlineData("\"Rice\": 50", "\"Rise\": 50", "roles.Rise", "'Rise' is not one of MealRole")]
    [InlineData("{\"Rice\": 50}", "{}", "roles", "is empty")]
    [InlineData("[3, 4]", "[4, 3]", "serving.steps", "is empty or not ascending")]
    [InlineData(
        "\"unit\": \"g\"",
        "\"unit\": \"ml\"",
        "serving.unit",
        "does not go with the style"
    )]
    [InlineData("\"step\": 50", "\"step\": 0", "serving.step", "is not above 0 g")]
    [InlineData(
        "\"family\"",
        "\"famly\": \"x\", \"family\"",
        "famly",
        "is not a field of the library"
    )]
    public void A_wrong_row_is_named_with_its_field(
        string right,
        string wrong,
        string field,
        string complaint
    )
    {
        var row = Rice.Replace(right, wrong, StringComparison.Ordinal);
        Assert.NotEqual(Rice, row);
        var fault = Assert.Throws<InvalidDataException>(() => Read(row));
        Assert.Equal($"Food 'rice', field '{field}': {complaint}.", fault.Message);
    }

    [Fact]
    public void A_row_without_id_is_shown_whole()
    {
        var fault = Assert.Throws<InvalidDataException>(() => Read("{\"name\": \"Rice\"}"));
        Assert.Contains("{\"name\": \"Rice\"}", fault.Message, StringComparison.Ordinal);
    }

    private static ImmutableArray<Food> Read(string row) =>
        FoodFile.Read(new MemoryStream(Encoding.UTF8.GetBytes($"[{row}]")));
}
