using System.Collections.Immutable;

namespace Practice.Domain.Foods;

/// <summary>What a row of the library must be to be usable at all; whether it is true is for the tests to ask.</summary>
internal static class FoodChecks
{
    public static void Check(Food food)
    {
        Demand(
            food,
            "id",
            food.Id.All(c => c is (>= 'a' and <= 'z') or (>= '0' and <= '9') or '-'),
            "has other than a-z, 0-9 and hyphens"
        );
        Demand(food, "roles", !food.Roles.IsEmpty, "is empty");
        Demand(
            food,
            "roles",
            food.Roles.All(role => role.Cover is >= 0 and <= 500),
            "has a cover outside 0 to 500"
        );
        Demand(food, "occasions", !food.Occasions.IsEmpty, "is empty");
        CheckNutrients(food, food.Per100G);
        CheckServing(food, food.Serving);
    }

    private static void CheckNutrients(Food food, Nutrients per100G)
    {
        foreach (var (field, grams) in Grams(per100G))
        {
            Demand(food, $"per100g.{field}", grams is >= 0 and <= 100, "is outside 0 to 100 g");
        }

        Demand(food, "per100g.kcal", per100G.EnergyKcal is >= 0 and <= 900, "is outside 0 to 900");
        Demand(
            food,
            "per100g.sodium",
            per100G.SodiumMg is >= 0 and <= 40_000,
            "is outside 0 to 40 g"
        );
        Demand(
            food,
            "per100g.potassium",
            per100G.PotassiumMg is null or (>= 0 and <= 20_000),
            "is outside 0 to 20 g"
        );
        Demand(
            food,
            "per100g.caffeine",
            per100G.CaffeineMg is >= 0 and <= 500,
            "is outside 0 to 500 mg"
        );
    }

    private static IEnumerable<(string Field, decimal Grams)> Grams(Nutrients per100G) =>
        [
            ("carb", per100G.CarbohydrateG),
            ("sugars", per100G.SugarsG),
            ("glucose", per100G.GlucoseG ?? 0),
            ("fructose", per100G.FructoseG ?? 0),
            ("sucrose", per100G.SucroseG ?? 0),
            ("lactose", per100G.LactoseG ?? 0),
            ("fibre", per100G.FibreG),
            ("protein", per100G.ProteinG),
            ("fat", per100G.FatG),
            ("water", per100G.WaterG),
        ];

    private static void CheckServing(Food food, Serving serving)
    {
        Demand(food, "serving.step", serving.StepGrams > 0, "is not above 0 g");
        Demand(food, "serving.per", serving.UnitsPerStep > 0, "is not above 0");
        Demand(food, "serving.steps", IsAscending(serving.Steps), "is empty or not ascending");
        Demand(
            food,
            "serving.unit",
            serving.Style switch
            {
                ServingStyle.Weighed => serving.Unit == "g",
                ServingStyle.Poured => serving.Unit == "ml",
                _ => serving.Unit is not ("g" or "ml"),
            },
            "does not go with the style"
        );
        Demand(
            food,
            "serving.measures",
            serving.Measures.All(measure => measure.Grams > 0),
            "has a measure that weighs nothing"
        );
    }

    private static bool IsAscending(ImmutableArray<int> steps) =>
        !steps.IsEmpty
        && steps[0] > 0
        && steps.Zip(steps.Skip(1)).All(pair => pair.First < pair.Second);

    private static void Demand(Food food, string field, bool holds, string wrong)
    {
        if (!holds)
        {
            throw FoodFields.Fault(food.Id, field, wrong);
        }
    }
}
