using System.Collections.Immutable;
using Practice.Domain.Foods;
using static Practice.Domain.Foods.MealRole;

namespace Practice.Planner.Editing;

/// <summary>Roles a person would trade for one another. Common practice, no source.</summary>
internal static class Interchange
{
    private static readonly ImmutableArray<ImmutableArray<MealRole>> Groups =
    [
        [Bread, SideBread, SideFlatbread],
        [Cereal, Porridge],
        [Rice, Noodles],
        [Pasta, Grain, Potato],
        [Drink, Shake, Milk],
        [SweetBite, SavouryBite, Fruit, Dessert, Yoghurt],
        [Vegetable, Salad],
        [Spread, Filling],
        [Topping, Syrup],
    ];

    public static bool Between(MealRole one, MealRole other) =>
        one == other || Groups.Any(g => g.Contains(one) && g.Contains(other));
}
