using Practice.Domain.Foods;
using Practice.Domain.Foods.Own;

namespace Practice.Domain.Tests.Foods.Own;

/// <summary>Foods that a practice might write down, without a fault.</summary>
internal static class SampleSheet
{
    /// <summary>A bar, counted.</summary>
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
                FibreG = 4,
                ProteinG = 5,
                FatG = 4,
                SodiumMg = 120,
                CaffeineMg = 0,
            },
            Serving = new()
            {
                Style = ServingStyle.Counted,
                Unit = "bar",
                UnitPlural = "bars",
                Grams = 45,
                Least = 1,
                Most = 3,
            },
            Allergens = [Allergen.Wheat],
            Roles = [MealRole.SweetBite],
            Occasions = [OccasionKind.MorningSnack, OccasionKind.AfternoonSnack],
            Source = "Label",
        };

    /// <summary>A rice, weighed as cooked.</summary>
    public static FoodSheet Rice { get; } =
        Bar with
        {
            Name = "Sticky rice of the house",
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
            Roles = [MealRole.Rice],
            Occasions = [OccasionKind.Lunch, OccasionKind.EveningMeal],
        };

    /// <summary>A drink, poured.</summary>
    public static FoodSheet Drink { get; } =
        Bar with
        {
            Name = "Pear and ginger cordial, mixed",
            Group = FoodGroup.Drink,
            Family = "squash",
            Per100G = new()
            {
                EnergyKcal = 40,
                CarbohydrateG = 10,
                SugarsG = 10,
                FibreG = 0,
                ProteinG = 0,
                FatG = 0,
                SodiumMg = 2,
                CaffeineMg = 0,
            },
            Serving = new()
            {
                Style = ServingStyle.Poured,
                Least = 200,
                Most = 400,
            },
            Allergens = [],
            Roles = [MealRole.Drink],
        };
}
