using Practice.Domain.Foods;

namespace Practice.Domain.Tests.Foods;

/// <summary>Arithmetic that holds for every food, whoever published it.</summary>
public sealed class LibrarySenseTests
{
    /// <summary>Rows the general energy factors do not fit, and why.</summary>
    private static readonly Dictionary<string, string> EnergyExceptions = [];

    /// <summary>Rows whose sugars exceed the carbohydrate by more than rounding, and why.</summary>
    private static readonly Dictionary<string, string> SugarExceptions = new()
    {
        ["melon-cantaloupe"] = "sugars measured, carbohydrate by difference, as published",
    };

    public static TheoryData<string> Ids() => [.. FoodLibrary.Standard.All.Select(food => food.Id)];

    /// <summary>
    /// Factors of Regulation (EU) 1169/2011, Annex XIV: carbohydrate and protein 4, fat 9, fibre 2 kcal/g. Alcohol is
    /// in none of the foods.
    /// </summary>
    [Theory]
    [MemberData(nameof(Ids))]
    public void Energy_follows_from_what_yields_it(string id)
    {
        var n = FoodLibrary.Standard.Find(id)!.Per100G;
        var expected = 4 * (n.CarbohydrateG + n.ProteinG) + 9 * n.FatG + 2 * n.FibreG;
        var near =
            Math.Abs(n.EnergyKcal - expected)
            <= Math.Max(10, 0.15m * Math.Max(n.EnergyKcal, expected));
        Assert.True(
            near != EnergyExceptions.ContainsKey(id),
            $"{id}: {n.EnergyKcal} kcal, by factors {expected}"
        );
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Parts_do_not_outweigh_the_whole(string id)
    {
        var n = FoodLibrary.Standard.Find(id)!.Per100G;
        var grams = n.CarbohydrateG + n.FibreG + n.ProteinG + n.FatG + n.WaterG;
        Assert.True(grams <= 101.5m, $"{id}: {grams} g in 100 g");
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Water_and_dry_matter_make_up_the_food(string id)
    {
        // what is left over is salt, ash and acids: most in yeast extract, 14 g
        var n = FoodLibrary.Standard.Find(id)!.Per100G;
        var grams = n.CarbohydrateG + n.FibreG + n.ProteinG + n.FatG + n.WaterG;
        Assert.True(grams >= 86, $"{id}: only {grams} g of 100 g accounted for");
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Sugars_are_part_of_the_carbohydrate(string id)
    {
        var n = FoodLibrary.Standard.Find(id)!.Per100G;
        var within = n.SugarsG <= n.CarbohydrateG + 0.5m;
        Assert.True(
            within != SugarExceptions.ContainsKey(id),
            $"{id}: {n.SugarsG} g sugars in {n.CarbohydrateG} g carbohydrate"
        );
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Single_sugars_are_part_of_the_sugars(string id)
    {
        var n = FoodLibrary.Standard.Find(id)!.Per100G;
        var single = (n.GlucoseG ?? 0) + (n.FructoseG ?? 0) + (n.SucroseG ?? 0) + (n.LactoseG ?? 0);
        Assert.True(single <= n.SugarsG + 0.5m, $"{id}: {single} g of {n.SugarsG} g sugars");
    }

    [Fact]
    public void Coffee_tea_cola_and_cocoa_hold_caffeine() =>
        Assert.All(
            [
                "tea-sugar",
                "coffee-milk-sugar",
                "cola",
                "iced-tea",
                "milk-chocolate",
                "hot-chocolate",
            ],
            id => Assert.True(FoodLibrary.Standard.Find(id)!.Per100G.CaffeineMg > 0, id)
        );

    [Theory]
    [InlineData("malto-6", 6)]
    [InlineData("malto-8", 8)]
    [InlineData("malto-14", 14)]
    [InlineData("glucose-drink", 8)]
    public void A_mixed_drink_is_as_strong_as_its_name_says(string id, int gramsPer100Ml)
    {
        var food = FoodLibrary.Standard.Find(id)!;
        var per100Ml = food.PerStep.CarbohydrateG / food.Serving.UnitsPerStep * 100;
        Assert.InRange(per100Ml, gramsPer100Ml - 0.2m, gramsPer100Ml + 0.2m);
    }

    [Fact]
    public void A_drink_counts_as_drunk_and_nothing_else_does() =>
        Assert.All(
            FoodLibrary.Standard.All,
            food => Assert.Equal(food.Serving.Style == ServingStyle.Poured, food.IsLiquid)
        );
}
