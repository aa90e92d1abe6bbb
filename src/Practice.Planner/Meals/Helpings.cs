using Practice.Domain.Foods;

namespace Practice.Planner.Meals;

/// <summary>How large a helping of one food may be. Common practice, no source.</summary>
internal static class Helpings
{
    private const decimal MostCupsOfCereal = 3;
    private const decimal MostSlices = 8;
    private const decimal MostBiscuits = 9;

    /// <summary>Most foods on one plate.</summary>
    public static int MostFoods(OccasionKind kind) =>
        IsSnack(kind) ? 4
        : kind == OccasionKind.Supper ? 3
        : 6;

    public static bool IsSnack(OccasionKind kind) =>
        kind
            is OccasionKind.MorningSnack
                or OccasionKind.AfternoonSnack
                or OccasionKind.LateAfternoonSnack;

    public static bool IsMain(OccasionKind kind) =>
        kind is OccasionKind.Lunch or OccasionKind.EveningMeal;

    /// <summary>
    /// Share of the most a main meal may weigh that a sitting may weigh.
    /// </summary>
    public static decimal WeightShare(OccasionKind kind) =>
        IsSnack(kind) ? 0.7m
        : kind == OccasionKind.Supper ? 0.45m
        : 1m;

    /// <summary>Largest share of a sitting's carbohydrate that one food in a role may bring.</summary>
    public static double LargestShare(MealRole role, OccasionKind kind)
    {
        var small = IsSnack(kind) || kind == OccasionKind.Supper;
        return role switch
        {
            MealRole.Cereal or MealRole.Porridge => small ? 0.9 : 0.52,
            MealRole.Bread or MealRole.Pancake or MealRole.SavouryCake => small ? 0.9 : 0.62,
            MealRole.Pasta
            or MealRole.Rice
            or MealRole.Noodles
            or MealRole.Potato
            or MealRole.Grain
            or MealRole.Pizza => 0.8,
            MealRole.Spread or MealRole.Syrup => 0.5,
            MealRole.Topping => 0.32,
            MealRole.Drink => small ? 0.7 : 0.35,
            MealRole.Shake => 0.9,
            MealRole.SweetBite or MealRole.SavouryBite => small ? 0.75 : 0.3,
            MealRole.Yoghurt => small ? 0.9 : 0.3,
            MealRole.Fruit => small ? 0.6 : 0.3,
            MealRole.SideBread or MealRole.SideFlatbread or MealRole.Dessert => 0.3,
            _ => 1.0,
        };
    }

    /// <summary>The step counts of a food that would be served in a role at a sitting with this aim.</summary>
    public static int[] Of(Food food, MealRole role, OccasionKind kind, decimal aimG)
    {
        var most = (decimal)LargestShare(role, kind) * aimG * 1.05m + 6;
        return
        [
            .. food.Serving.Steps.Where(steps =>
                steps * food.PerStep.CarbohydrateG <= most && steps <= MostSteps(food, role)
            ),
        ];
    }

    private static int MostSteps(Food food, MealRole role)
    {
        var serving = food.Serving;
        if (serving.Unit == "slice")
            return (int)(MostSlices / serving.UnitsPerStep);
        if (serving.Unit == "biscuit")
            return (int)(MostBiscuits / serving.UnitsPerStep);
        if (role != MealRole.Cereal)
            return serving.MaxSteps;
        var cup =
            serving.Unit == "cup"
                ? serving.StepGrams / serving.UnitsPerStep
                : serving.Measures.FirstOrDefault(m => m.Name == "cup")?.Grams;
        return cup is { } grams
            ? (int)(MostCupsOfCereal * grams / serving.StepGrams)
            : serving.MaxSteps;
    }
}
