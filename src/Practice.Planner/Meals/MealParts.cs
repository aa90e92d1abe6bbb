using Practice.Domain.Foods;
using Practice.Planner.Model;

namespace Practice.Planner.Meals;

/// <summary>What holds a meal together besides its pattern. Common practice, no source.</summary>
internal static class MealParts
{
    /// <summary>Whether a food is part of the starchy base that carries a meal.</summary>
    public static bool IsBase(MealRole role) =>
        IsStaple(role)
        || role
            is MealRole.Bread
                or MealRole.Cereal
                or MealRole.Porridge
                or MealRole.Pancake
                or MealRole.SavouryBite
                or MealRole.SideBread
                or MealRole.SideFlatbread;

    /// <summary>Whether a food is what a main meal is named after.</summary>
    public static bool IsStaple(MealRole role) =>
        role
            is MealRole.Pasta
                or MealRole.Rice
                or MealRole.Noodles
                or MealRole.Potato
                or MealRole.Grain
                or MealRole.Pizza
                or MealRole.SavouryCake;

    /// <summary>Least share of a main meal's carbohydrate in what it is named after.</summary>
    public const double LeastStapleShare = 0.3;

    /// <summary>Least share of the sitting's carbohydrate that the base brings; null where none is asked.</summary>
    public static double? LeastBaseShare(OccasionKind kind) =>
        kind == OccasionKind.Breakfast ? 0.38
        : Helpings.IsMain(kind) ? 0.42
        : null;

    /// <summary>Whether a food counts as the protein food of a main meal.</summary>
    public static bool IsProteinFood(Item item) =>
        item.Role == MealRole.Protein
        || item.Role
            is MealRole.Filling
                or MealRole.PastaSauce
                or MealRole.RiceSauce
                or MealRole.Dip
                or MealRole.Pizza
            && item.Food.PerStep.ProteinG * item.Food.Serving.MinSteps >= 4;
}
