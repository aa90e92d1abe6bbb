using System.Collections.Immutable;
using Practice.Domain.Foods;

namespace Practice.Domain.Tests.Plans;

/// <summary>A valid food; tests change one fact.</summary>
internal static class SampleFood
{
    public static Food Toast { get; } =
        new()
        {
            Id = "toast",
            Name = "Toast",
            Group = FoodGroup.Bakery,
            Family = "bread",
            Per100G = new Nutrients
            {
                EnergyKcal = 266,
                CarbohydrateG = 46.7m,
                SugarsG = 5,
                FibreG = 2.7m,
                ProteinG = 8.9m,
                FatG = 3.3m,
                SodiumMg = 490,
            },
            Serving = new Serving
            {
                Style = ServingStyle.Counted,
                StepGrams = 30,
                UnitsPerStep = 1,
                Unit = "slice",
                UnitPlural = "slices",
                Steps = [1, 2, 3, 4],
            },
            Allergens = [Allergen.Wheat],
            Roles = [new FoodRole(MealRole.Bread, 10)],
            Occasions = [OccasionKind.Breakfast],
            Origin = new FoodOrigin("invented for tests", null),
        };

    public static Food With(params Allergen[] allergens) =>
        Toast with
        {
            Allergens = [.. allergens],
        };
}
