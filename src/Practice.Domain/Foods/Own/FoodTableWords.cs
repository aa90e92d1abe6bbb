using System.Collections.Frozen;
using System.Text;
using Practice.Domain.Tables;

namespace Practice.Domain.Foods.Own;

/// <summary>Words that tables use for what the library has names for.</summary>
public static class FoodTableWords
{
    /// <summary>Allergens. What leaves open which is meant (gluten, nuts, shellfish) is no word for one.</summary>
    public static FrozenDictionary<string, Allergen> Allergens { get; } =
        Names<Allergen>()
            .Concat([
                ("egg", Allergen.Eggs),
                ("peanut", Allergen.Peanuts),
                ("soy", Allergen.Soya),
                ("soybeans", Allergen.Soya),
                ("dairy", Allergen.Milk),
                ("lactose", Allergen.Milk),
                ("almonds", Allergen.TreeNuts),
                ("hazelnuts", Allergen.TreeNuts),
                ("walnuts", Allergen.TreeNuts),
                ("cashews", Allergen.TreeNuts),
                ("spelt", Allergen.Wheat),
                ("malt", Allergen.Barley),
                ("oat", Allergen.Oats),
                ("crustacean", Allergen.Crustaceans),
                ("prawns", Allergen.Crustaceans),
                ("mollusc", Allergen.Molluscs),
                ("sulfites", Allergen.Sulphites),
                ("sulphur dioxide", Allergen.Sulphites),
            ])
            .ToFrozenDictionary(w => w.Item1, w => w.Item2);

    /// <summary>Words for "none of the 14".</summary>
    internal static FrozenSet<string> NoAllergen { get; } =
        new[] { "none", "none of the 14", "no allergens", "nil" }.ToFrozenSet();

    /// <summary>What diets and menus care about.</summary>
    internal static FrozenDictionary<string, FoodTraits> Traits { get; } =
        new (string Word, FoodTraits Value)[]
        {
            ("meat", FoodTraits.Meat),
            ("pork", FoodTraits.Pork),
            ("beef", FoodTraits.Beef),
            ("fish", FoodTraits.Seafood),
            ("honey", FoodTraits.AnimalProduct),
            ("alcohol", FoodTraits.Alcohol),
            ("sweetener", FoodTraits.Sweetener),
            ("raw", FoodTraits.RawAnimal),
            ("uncertified oats", FoodTraits.UncertifiedOats),
            ("fodmap", FoodTraits.HighFodmap),
            ("wholegrain", FoodTraits.HighResidue),
            ("sugary", FoodTraits.Sugary),
            ("confectionery", FoodTraits.Confectionery),
            ("sport", FoodTraits.SportsProduct),
            ("substitute", FoodTraits.Substitute),
        }.ToFrozenDictionary(w => w.Word, w => w.Value);

    internal static FrozenDictionary<string, MealRole> Roles { get; } =
        Names<MealRole>().ToFrozenDictionary(w => w.Word, w => w.Value);

    internal static FrozenDictionary<string, OccasionKind> Occasions { get; } =
        Names<OccasionKind>().ToFrozenDictionary(w => w.Word, w => w.Value);

    internal static FrozenDictionary<string, FoodGroup> Groups { get; } =
        Names<FoodGroup>().ToFrozenDictionary(w => w.Word, w => w.Value);

    internal static FrozenDictionary<string, bool> YesOrNo { get; } =
        new Dictionary<string, bool>
        {
            ["yes"] = true,
            ["y"] = true,
            ["true"] = true,
            ["1"] = true,
            ["no"] = false,
            ["n"] = false,
            ["false"] = false,
            ["0"] = false,
        }.ToFrozenDictionary();

    private static IEnumerable<(string Word, T Value)> Names<T>()
        where T : struct, Enum =>
        Enum.GetValues<T>().Select(value => (RowReader.Key(Spaced(value.ToString())), value));

    private static string Spaced(string name)
    {
        var words = new StringBuilder();
        foreach (var letter in name)
            words.Append(char.IsUpper(letter) ? " " : "").Append(letter);
        return words.ToString();
    }
}
