using Practice.Domain.Foods;
using Practice.Domain.Foods.Own;

namespace Practice.TestSupport;

/// <summary>A food of a practice's own with everything said.</summary>
internal static class SampleFood
{
    public static FoodSheet Bar { get; } =
        new()
        {
            Name = "Oven-baked fig bar",
            UsName = "Baked fig bar",
            Group = FoodGroup.Snack,
            Family = "snack-bar",
            Per100G = new()
            {
                EnergyKcal = 352,
                CarbohydrateG = 72,
                SugarsG = 40,
                GlucoseG = 14.5m,
                FructoseG = 15,
                SucroseG = 8,
                LactoseG = 0.1m,
                FibreG = 4,
                ProteinG = 5,
                FatG = 4,
                SodiumMg = 120,
                PotassiumMg = 300,
                WaterG = 14.2m,
                CaffeineMg = 0,
            },
            Serving = new()
            {
                Style = ServingStyle.Counted,
                Unit = "bar",
                UnitPlural = "bars",
                UsUnit = "square",
                UsUnitPlural = "squares",
                Grams = 45,
                CanBeHalved = true,
                Least = 0.5m,
                Most = 3,
                Measures = [new("blue bowl", "blue bowls", 220, HouseholdUnits.Metric, true)],
            },
            Allergens = [Allergen.Wheat, Allergen.Milk],
            Traits = FoodTraits.Sugary,
            Roles = [MealRole.SweetBite],
            Occasions = [OccasionKind.MorningSnack, OccasionKind.AfternoonSnack],
            Source = "Label",
        };

    /// <summary>A rice of the house, for a main meal.</summary>
    public static FoodSheet Rice { get; } =
        Bar with
        {
            Name = "Rice of the house",
            Group = FoodGroup.Starch,
            Family = "rice",
            Per100G = new()
            {
                EnergyKcal = 130,
                CarbohydrateG = 28,
                SugarsG = 0,
                FibreG = 0.4m,
                ProteinG = 2.7m,
                FatG = 0.3m,
                SodiumMg = 1,
                CaffeineMg = 0,
            },
            Serving = new()
            {
                Style = ServingStyle.Weighed,
                Least = 100,
                Most = 350,
            },
            Allergens = [],
            Traits = FoodTraits.None,
            Roles = [MealRole.Rice],
            Occasions = [OccasionKind.Lunch, OccasionKind.EveningMeal],
        };
}
