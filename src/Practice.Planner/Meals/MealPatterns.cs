using System.Collections.Immutable;
using Practice.Domain.Foods;
using static Practice.Domain.Foods.MealRole;

namespace Practice.Planner.Meals;

/// <summary>
/// The meals a plan is made of. Common practice, no source: written to be read and mended by a dietitian. A pattern
/// says which parts a meal has; <see cref="Couplings"/> says how much of each goes together.
/// </summary>
internal static class MealPatterns
{
    private static readonly ImmutableArray<OccasionKind> Breakfast = [OccasionKind.Breakfast];

    private static readonly ImmutableArray<OccasionKind> Snack =
    [
        OccasionKind.MorningSnack,
        OccasionKind.AfternoonSnack,
        OccasionKind.LateAfternoonSnack,
    ];

    private static readonly ImmutableArray<OccasionKind> Lunch = [OccasionKind.Lunch];

    private static readonly ImmutableArray<OccasionKind> Main =
    [
        OccasionKind.Lunch,
        OccasionKind.EveningMeal,
    ];

    private static readonly ImmutableArray<OccasionKind> Supper = [OccasionKind.Supper];

    public static ImmutableArray<MealPattern> All { get; } =
    [
        // breakfast
        new(
            "Bread and spread",
            Breakfast,
            Cost: 0,
            [One(Bread), OneOrTwo(Spread), Maybe(Fruit), Maybe(Yoghurt), UpToTwo(Drink)]
        ),
        new(
            "Cereal with milk",
            Breakfast,
            Cost: 0,
            [
                One(Cereal),
                One(Milk),
                Maybe(Topping),
                Maybe(Fruit),
                Maybe(Bread, 0.67),
                Maybe(Spread),
                UpToTwo(Drink),
            ]
        ),
        new(
            "Porridge",
            Breakfast,
            Cost: 0,
            [
                One(Porridge),
                One(Milk),
                One(Topping),
                Maybe(Fruit),
                Maybe(Bread, 0.67),
                Maybe(Spread),
                UpToTwo(Drink),
            ]
        ),
        new(
            "Pancakes with syrup",
            Breakfast,
            Cost: 2,
            [One(Pancake), One(Syrup), Maybe(Fruit), Maybe(Yoghurt), UpToTwo(Drink)]
        ),
        new(
            "Savoury toast",
            Breakfast,
            Cost: 3,
            [One(Bread), One(Filling), Maybe(Fruit), Maybe(Yoghurt), OneOrTwo(Drink)]
        ),
        new(
            "Savoury cakes with a dip",
            Breakfast,
            Cost: 2,
            [One(SavouryCake), One(Dip), Maybe(Fruit), Maybe(Yoghurt), UpToTwo(Drink)]
        ),
        // snacks
        new(
            "Bread and spread",
            Snack,
            Cost: 0,
            [One(Bread, 0.67), One(Spread), Maybe(Fruit), Maybe(Drink)]
        ),
        new(
            "Sweet bite and a drink",
            Snack,
            Cost: 1,
            [One(SweetBite), Maybe(Fruit), OneOrTwo(Drink)],
            LeastFoods: 2
        ),
        new(
            "Salty bite and a drink",
            Snack,
            Cost: 1,
            [One(SavouryBite), OneOrTwo(Drink), Maybe(SweetBite), Maybe(Fruit)],
            LeastFoods: 2
        ),
        new(
            "Yoghurt bowl",
            Snack,
            Cost: 1,
            [One(Yoghurt), Maybe(Fruit), Maybe(Topping), Maybe(SweetBite), Maybe(Drink)],
            LeastFoods: 2
        ),
        new(
            "Shake and bite",
            Snack,
            Cost: 1,
            [One(Shake), Maybe(Fruit), Maybe(SweetBite)],
            LeastFoods: 2
        ),
        new(
            "Cereal with milk",
            Snack,
            Cost: 3,
            [One(Cereal, 0.6), One(Milk), Maybe(Fruit), Maybe(Drink)]
        ),
        new("Pancakes with syrup", Snack, Cost: 4, [One(Pancake, 0.6), One(Syrup), Maybe(Drink)]),
        // lunch and evening meal
        new(
            "Pasta",
            Main,
            Cost: 0,
            [
                One(Pasta),
                One(PastaSauce),
                Maybe(Protein),
                Maybe(Vegetable),
                Maybe(SideBread, 0.5),
                UpToTwo(Drink),
                Maybe(Dessert),
            ]
        ),
        new(
            "Rice",
            Main,
            Cost: 0,
            [
                One(Rice),
                One(RiceSauce),
                One(Protein),
                Maybe(Vegetable),
                Maybe(SideFlatbread, 0.5),
                UpToTwo(Drink),
                Maybe(Dessert),
            ]
        ),
        new(
            "Noodles",
            Main,
            Cost: 1,
            [
                One(Noodles),
                One(RiceSauce),
                One(Protein),
                Maybe(Vegetable),
                UpToTwo(Drink),
                Maybe(Dessert),
            ]
        ),
        new(
            "Potatoes",
            Main,
            Cost: 1,
            [
                One(Potato),
                One(Protein),
                Maybe(PastaSauce),
                Maybe(Vegetable),
                Maybe(SideBread, 0.5),
                UpToTwo(Drink),
                Maybe(Dessert),
            ]
        ),
        new(
            "Grain with sauce",
            Main,
            Cost: 2,
            [
                One(Grain),
                One(PastaSauce),
                One(Protein),
                Maybe(Vegetable),
                Maybe(SideBread, 0.5),
                UpToTwo(Drink),
                Maybe(Dessert),
            ]
        ),
        new(
            "Savoury cakes with a dip",
            Main,
            Cost: 2,
            [
                One(SavouryCake),
                One(Dip),
                Maybe(Protein),
                Maybe(Vegetable),
                UpToTwo(Drink),
                Maybe(Dessert),
            ]
        ),
        new(
            "Sandwich",
            Lunch,
            Cost: 0,
            [
                One(Bread),
                OneOrTwo(Filling),
                Maybe(Salad),
                Maybe(SavouryBite, 0.5),
                UpToTwo(Drink),
                Maybe(Dessert),
            ]
        ),
        new("Pizza", Main, Cost: 3, [One(Pizza), Maybe(Salad), UpToTwo(Drink), Maybe(Dessert)]),
        // supper
        new(
            "Cereal with milk",
            Supper,
            Cost: 0,
            [One(Cereal, 0.6), One(Milk), Maybe(Topping), Maybe(Fruit)]
        ),
        new("Bread and spread", Supper, Cost: 0, [One(Bread, 0.67), One(Spread), Maybe(Drink)]),
        new(
            "Milk pudding and fruit",
            Supper,
            Cost: 0,
            [One(Yoghurt), Maybe(Fruit), Maybe(Topping)]
        ),
        new("Porridge", Supper, Cost: 2, [One(Porridge, 0.7), One(Milk), Maybe(Topping)]),
        new("Drink and biscuit", Supper, Cost: 2, [One(Drink), One(SweetBite)]),
        new("Shake and bite", Supper, Cost: 1, [One(Shake), Maybe(SweetBite), Maybe(Fruit)]),
    ];

    /// <summary>What a sitting falls back to when no meal can be made of the foods that are left.</summary>
    public static MealPattern Nothing { get; } =
        new("Nothing fits", [.. Enum.GetValues<OccasionKind>()], 0, [], LeastFoods: 0);

    private static Part One(MealRole role, double scale = 1) => new(role, 1, 1, scale);

    private static Part OneOrTwo(MealRole role) => new(role, 1, 2);

    private static Part Maybe(MealRole role, double scale = 1) => new(role, 0, 1, scale);

    private static Part UpToTwo(MealRole role) => new(role, 0, 2);
}
