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
        new(
            "egg goes with rice, noodles and potatoes, not with pasta",
            Family("egg"),
            Is(MealRole.Pasta)
        ),
        new(
            "a meat or fish sauce is the meal's protein already",
            HeartySauce,
            Is(MealRole.Protein)
        ),
        new(
            "lentils do not go with sweet glazes",
            Family("lentil"),
            Family("glaze", "sweet-sour", "white-sauce")
        ),
        new("tofu does not go with white sauce", Family("tofu", "seitan"), Family("white-sauce")),
        new(
            "fish does not go with cheese sauce",
            Family("fish", "shellfish"),
            Food("cheese-sauce")
        ),
        new("egg does not go with sweet sauces", Family("egg"), Family("sweet-sour", "glaze")),
        new("one milky thing is enough beside a shake", Is(MealRole.Shake), Is(MealRole.Yoghurt)),
        new("cheese does not go with fish in a sandwich", Family("cheese"), Family("fish")),
        new(
            "naan does not go with a sweet glaze",
            Is(MealRole.SideFlatbread),
            Family("glaze", "sweet-sour")
        ),
        new(
            "jam and syrups go on porridge and yoghurt, not on cereal",
            Topping("jam", "caramel", "syrup"),
            Is(MealRole.Cereal)
        ),
        new(
            "yeast extract does not go with sweet spreads",
            Family("yeast-extract"),
            Family("jam", "honey", "syrup", "caramel")
        ),
        new(
            "roots and cabbages of the north go with potatoes and bread",
            Food("beetroot", "parsnip", "cabbage", "cauliflower"),
            Is(MealRole.Rice)
        ),
        new(
            "roots and cabbages of the north go with potatoes and bread",
            Food("beetroot", "parsnip", "cabbage", "cauliflower"),
            Is(MealRole.Noodles)
        ),
        new(
            "beetroot and parsnip do not go with pasta",
            Food("beetroot", "parsnip"),
            Is(MealRole.Pasta)
        ),
        new("baked beans go with potatoes and toast", Food("baked-beans"), Is(MealRole.Pasta)),
        new("baked beans go with potatoes and toast", Food("baked-beans"), Is(MealRole.Rice)),
        new("baked beans go with potatoes and toast", Food("baked-beans"), Is(MealRole.Noodles)),
        new(
            "a milky drink does not go with lemonade",
            Drink("shake", "milk", "kefir"),
            Drink("soft-drink", "squash")
        ),
        new("malt loaf is sweet enough", Family("malt-loaf"), Spread("syrup", "caramel")),
        new("filled dumplings have their own filling", Family("dumpling"), Is(MealRole.Protein)),
        new("gravy is for potatoes", Family("gravy"), Is(MealRole.Pasta)),
        new("gravy is for potatoes", Family("gravy"), Is(MealRole.Grain)),
        new(
            "a sausage goes with potatoes or bread",
            Family("vegetarian-sausage"),
            Is(MealRole.Rice)
        ),
        new(
            "a sausage goes with potatoes or bread",
            Family("vegetarian-sausage"),
            Is(MealRole.Noodles)
        ),
        new(
            "a savoury filling wants a plain bread",
            Is(MealRole.Filling),
            Family("malt-loaf", "pretzel", "bun", "scone", "cracker")
        ),
        new(
            "a savoury filling wants a plain bread",
            Is(MealRole.Filling),
            Food("raisin-bread", "raisin-bagel")
        ),
    ];

    private static bool HeartySauce(Item item) =>
        item.Role is MealRole.PastaSauce or MealRole.RiceSauce or MealRole.Dip
        && item.Food.Family is "bolognese" or "meat-sauce" or "fish-sauce" or "lentil";

    private static Func<Item, bool> Topping(params string[] families) =>
        Playing(MealRole.Topping, families);

    private static Func<Item, bool> Spread(params string[] families) =>
        Playing(MealRole.Spread, families);

    private static Func<Item, bool> Drink(params string[] families) =>
        Playing(MealRole.Drink, families);

    private static Func<Item, bool> Playing(MealRole role, string[] families) =>
        item => item.Role == role && families.Contains(item.Food.Family);

    private static Func<Item, bool> Food(params string[] ids) => item => ids.Contains(item.Food.Id);

    private static Func<Item, bool> Is(MealRole role) => item => item.Role == role;

    private static Func<Item, bool> Family(params string[] families) =>
        item => families.Contains(item.Food.Family);
}
