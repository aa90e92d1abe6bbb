using System.Globalization;
using System.Text.RegularExpressions;
using Practice.Domain.Foods;

namespace Practice.Domain.Tests.Foods;

/// <summary>What a recipe's note lists adds up to the values of its row.</summary>
public sealed partial class RecipeTests
{
    public static TheoryData<string> Recipes() => Origins.IdsFrom("Recipe");

    [Theory]
    [MemberData(nameof(Recipes))]
    public void A_recipe_adds_up_to_its_row(string id)
    {
        var food = FoodLibrary.Standard.Find(id)!;
        var parts = food.Origin.Note!.Split(';');
        var sum = Component()
            .Matches(parts[0])
            .Select(Nutrients)
            .Aggregate((left, right) => left + right);
        var lost = parts.Select(part => WaterLost().Match(part)).FirstOrDefault(m => m.Success);
        sum = sum with { WaterG = sum.WaterG - (lost is null ? 0 : Number(lost)) };

        AssertNear(id, "kcal", sum.EnergyKcal, food.Per100G.EnergyKcal, 2);
        AssertNear(id, "carbohydrate", sum.CarbohydrateG, food.Per100G.CarbohydrateG, 0.2m);
        AssertNear(id, "sugars", sum.SugarsG, food.Per100G.SugarsG, 0.2m);
        AssertNear(id, "fibre", sum.FibreG, food.Per100G.FibreG, 0.1m);
        AssertNear(id, "protein", sum.ProteinG, food.Per100G.ProteinG, 0.1m);
        AssertNear(id, "fat", sum.FatG, food.Per100G.FatG, 0.15m);
        AssertNear(id, "sodium", sum.SodiumMg, food.Per100G.SodiumMg, 6);
        AssertNear(id, "potassium", sum.PotassiumMg!.Value, food.Per100G.PotassiumMg!.Value, 3);
        AssertNear(id, "water", sum.WaterG, food.Per100G.WaterG, 0.4m);
    }

    private static Nutrients Nutrients(Match component)
    {
        var grams = Number(component);
        var record = component.Groups["record"];
        if (record.Success && FoodLibrary.Standard.Find(record.Value) is { } food)
            return food.Per100G.ForGrams(grams);
        var published =
            !record.Success ? PublishedRecord.Own[component.Groups["name"].Value]
            : record.Value.StartsWith("CIQUAL ", StringComparison.Ordinal)
                ? PublishedRecord.Ciqual[record.Value[7..]]
            : PublishedRecord.Sr28[record.Value];
        return Nutrients(published).ForGrams(grams);
    }

    private static Nutrients Nutrients(PublishedRecord record)
    {
        var fromCiqual = Origins
            .From("CIQUAL 2020")
            .FirstOrDefault(food =>
                PublishedRecord.Ciqual.GetValueOrDefault(food.Origin.Record!) == record
            );
        return fromCiqual?.Per100G
            ?? new()
            {
                EnergyKcal = record["energy_kcal"]!.Value,
                CarbohydrateG = record.AvailableCarbohydrate!.Value,
                SugarsG = record["sugars_g"]!.Value,
                FibreG = record["fibre_g"]!.Value,
                ProteinG = record["protein_g"]!.Value,
                FatG = record["fat_g"]!.Value,
                SodiumMg = record["sodium_mg"]!.Value,
                PotassiumMg = record["potassium_mg"]!.Value,
                WaterG = record["water_g"]!.Value,
            };
    }

    private static decimal Number(Match match) =>
        decimal.Parse(match.Groups["grams"].Value, CultureInfo.InvariantCulture);

    private static void AssertNear(
        string id,
        string what,
        decimal sum,
        decimal row,
        decimal tolerance
    ) =>
        Assert.True(
            Math.Abs(sum - row) <= Math.Max(tolerance, 0.02m * row),
            $"{id}: {what} of the parts {sum}, of the row {row}"
        );

    [GeneratedRegex(
        @"(?<grams>[\d.]+) g (?<name>.+?)(?: \((?<record>\d{5}|CIQUAL \d{4,5}|[a-z0-9-]+)\))?(?=, [\d.]+ g |$)"
    )]
    private static partial Regex Component();

    [GeneratedRegex(@"^ (?<grams>[\d.]+) g water lost in cooking$")]
    private static partial Regex WaterLost();
}
