using Practice.Domain.Foods;

namespace Practice.Domain.Tests.Foods;

/// <summary>Rows taken from a published table hold what it published, but for what their note says.</summary>
public sealed class PublishedValuesTests
{
    public static TheoryData<string> Sr28Foods() => Origins.IdsFrom("USDA SR28");

    public static TheoryData<string> CiqualFoods() => Origins.IdsFrom("CIQUAL 2020");

    [Fact]
    public void Most_foods_come_from_a_published_table()
    {
        var published = Origins.From("USDA SR28").Count() + Origins.From("CIQUAL 2020").Count();
        Assert.True(published * 3 >= FoodLibrary.Standard.All.Length * 2, $"{published} foods");
    }

    [Fact]
    public void Every_food_says_where_its_values_come_from() =>
        Assert.All(
            FoodLibrary.Standard.All,
            food =>
                Assert.True(
                    food.Origin switch
                    {
                        { Dataset: "USDA SR28", Record: { } r } => PublishedRecord.Sr28.ContainsKey(
                            r
                        ),
                        { Dataset: "CIQUAL 2020", Record: { } r } =>
                            PublishedRecord.Ciqual.ContainsKey(r),
                        { Dataset: "Recipe", Record: null, Note: not null } => true,
                        _ => false,
                    },
                    food.Id
                )
        );

    [Theory]
    [MemberData(nameof(Sr28Foods))]
    public void A_food_of_SR28_holds_the_published_values(string id)
    {
        var food = FoodLibrary.Standard.Find(id)!;
        var (ours, record) = (food.Per100G, PublishedRecord.Sr28[food.Origin.Record!]);

        Assert.Equal(record["energy_kcal"], ours.EnergyKcal);
        Assert.Equal(record["protein_g"], ours.ProteinG);
        Assert.Equal(record["fat_g"], ours.FatG);
        Assert.Equal(record["sodium_mg"], ours.SodiumMg);
        Assert.Equal(record["potassium_mg"], ours.PotassiumMg);
        Assert.Equal(record["water_g"], ours.WaterG);
        Assert.Equal(record["caffeine_mg"] ?? 0, ours.CaffeineMg);
        Assert.Equal(record["glucose_g"], ours.GlucoseG);
        Assert.Equal(record["fructose_g"], ours.FructoseG);
        Assert.Equal(record["sucrose_g"], ours.SucroseG);

        AssertEqualUnlessBlank(food, "Fibre", record["fibre_g"], ours.FibreG);
        AssertEqualUnlessBlank(food, "Fibre", record.AvailableCarbohydrate, ours.CarbohydrateG);
        AssertEqualUnlessBlank(food, "Sugars", record["sugars_g"], ours.SugarsG);
        Assert.Equal(ExpectedLactose(food, record["lactose_g"]), ours.LactoseG);
    }

    [Theory]
    [MemberData(nameof(CiqualFoods))]
    public void A_food_of_CIQUAL_holds_the_published_values(string id)
    {
        var food = FoodLibrary.Standard.Find(id)!;
        var (ours, record) = (food.Per100G, PublishedRecord.Ciqual[food.Origin.Record!]);

        Assert.Equal(record["carbohydrate_g"], ours.CarbohydrateG);
        Assert.Equal(record["sugars_g"], ours.SugarsG);
        Assert.Equal(record["fibre_g"], ours.FibreG);
        Assert.Equal(record["fat_g"], ours.FatG);
        Assert.Equal(record["protein_g"]!.Value, ours.ProteinG, precision: 2);
        Assert.Equal(record["sodium_mg"]!.Value, ours.SodiumMg, precision: 1);
        Assert.Equal(AboveDetection(record["glucose_g"]), ours.GlucoseG);
        Assert.Equal(AboveDetection(record["fructose_g"]), ours.FructoseG);
    }

    private static void AssertEqualUnlessBlank(
        Food food,
        string what,
        decimal? published,
        decimal ours
    )
    {
        if (published is { } value)
            Assert.Equal(value, ours);
        else
            Assert.True(food.Notes($"{what} not in the record"), $"{food.Id}: {what} unexplained");
    }

    /// <summary>
    /// No milk, no lactose; sold as free of it, none; milk in the recipe but none found by the table: not known.
    /// </summary>
    private static decimal? ExpectedLactose(Food food, decimal? published) =>
        !food.Allergens.Contains(Allergen.Milk) || food.Notes("lactose taken as nil") ? 0
        : published <= 0.1m ? null
        : published;

    /// <summary>The stored copy has lost its "less than" signs: 0.2 and 0.5 are limits, not contents.</summary>
    private static decimal? AboveDetection(decimal? value) => value is 0.2m or 0.5m ? null : value;
}
