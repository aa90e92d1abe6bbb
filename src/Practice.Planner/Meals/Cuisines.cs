using Practice.Domain.Foods;
using Practice.Planner.Model;

namespace Practice.Planner.Meals;

/// <summary>Dishes of one kitchen go together; those of two far kitchens do not share a plate. Taste, no source.</summary>
internal static class Cuisines
{
    // what has spread so far that it goes with anything of its neighbours
    private static readonly string[] AtHomeAnywhere =
    [
        "european",
        "british-irish",
        "north-american",
    ];

    /// <summary>The kitchen a food is bound to; null when it goes with anything.</summary>
    public static string? Of(Food food) =>
        food.Cuisine is { } cuisine && !AtHomeAnywhere.Contains(cuisine) ? cuisine : null;

    /// <summary>What a dish is built on.</summary>
    public static bool IsBuiltOn(Item item) => MealParts.IsStaple(item.Role);

    /// <summary>What goes with it and should be of the same kitchen, or of none.</summary>
    public static bool GoesWith(Item item) =>
        item.Role
            is MealRole.RiceSauce
                or MealRole.PastaSauce
                or MealRole.Dip
                or MealRole.Protein
                or MealRole.Vegetable
                or MealRole.SideFlatbread;
}
