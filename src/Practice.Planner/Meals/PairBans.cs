using System.Collections.Immutable;
using Practice.Domain.Foods;
using Practice.Planner.Model;

namespace Practice.Planner.Meals;

/// <summary>Two things that do not belong on one plate.</summary>
/// <param name="Says">Why.</param>
/// <param name="One">The one.</param>
/// <param name="Other">The other.</param>
internal sealed record PairBan(string Says, Func<Item, bool> One, Func<Item, bool> Other);

/// <summary>What does not go together. Common practice and taste, no source.</summary>
internal static class PairBans
{
    public static ImmutableArray<PairBan> All { get; } =
    [
        new("a meat sauce is the meal's meat already", MeatSauce, Is(MealRole.Protein)),
        new(
            "lentils do not go with sweet glazes",
            Family("lentil"),
            Family("glaze", "sweet-sour", "white-sauce")
        ),
        new("tofu does not go with white sauce", Family("tofu", "seitan"), Family("white-sauce")),
        new("one milky thing is enough beside a shake", Is(MealRole.Shake), Is(MealRole.Yoghurt)),
        new("cheese does not go with fish in a sandwich", Family("cheese"), Family("fish")),
        new(
            "naan does not go with a sweet glaze",
            Is(MealRole.SideFlatbread),
            Family("glaze", "sweet-sour")
        ),
    ];

    private static bool MeatSauce(Item item) =>
        item.Role == MealRole.PastaSauce && item.Food.Is(FoodTraits.Meat);

    private static Func<Item, bool> Is(MealRole role) => item => item.Role == role;

    private static Func<Item, bool> Family(params string[] families) =>
        item => families.Contains(item.Food.Family);
}
