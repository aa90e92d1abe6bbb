using System.Collections.Immutable;

namespace Practice.Domain.Foods.Own;

/// <summary>What a name promises or gives away: vegan, gluten-free, peanut.</summary>
internal static class NameClaims
{
    /// <summary>Words of names that give an allergen away, a judgement for typical recipes; no source.</summary>
    private static readonly (Allergen Allergen, string[] Words)[] GivenAway =
    [
        (Allergen.Wheat, ["wheat", "bread", "pasta", "couscous", "bulgur", "semolina", "bagel"]),
        (Allergen.Barley, ["barley", "malt", "malted"]),
        (Allergen.Rye, ["rye"]),
        (Allergen.Oats, ["oat", "oats"]),
        (Allergen.Crustaceans, ["prawn", "prawns", "shrimp", "crab", "lobster"]),
        (Allergen.Eggs, ["egg", "eggs", "omelette", "meringue"]),
        (Allergen.Fish, ["fish", "tuna", "salmon", "cod", "anchovy", "sardine"]),
        (Allergen.Peanuts, ["peanut", "peanuts"]),
        (Allergen.Soya, ["soya", "soy", "tofu", "edamame", "tempeh"]),
        (Allergen.Milk, ["milk", "cheese", "yoghurt", "yogurt", "cream", "whey", "custard"]),
        (
            Allergen.TreeNuts,
            ["almond", "almonds", "hazelnut", "walnut", "cashew", "pecan", "pistachio"]
        ),
        (Allergen.Celery, ["celery", "celeriac"]),
        (Allergen.Mustard, ["mustard"]),
        (Allergen.Sesame, ["sesame", "tahini", "hummus"]),
        (Allergen.Lupin, ["lupin"]),
        (Allergen.Molluscs, ["mussel", "mussels", "oyster", "squid", "octopus"]),
    ];

    private static readonly Allergen[] Gluten = [Allergen.Wheat, Allergen.Barley, Allergen.Rye];

    public static bool IsCalledGlutenFree(FoodSheet sheet) =>
        Says(WordsOf(sheet), "gluten", "free");

    public static IEnumerable<FoodFault> Of(FoodSheet sheet, ImmutableArray<Allergen> allergens)
    {
        var words = WordsOf(sheet);
        var promised = Broken(words, sheet, allergens).ToList();
        // a broken promise is told once, as what it is
        return promised.Count > 0
            ? promised.Select(text => new FoodFault(FoodField.Allergens, text))
            : Forgotten(words, allergens);
    }

    private static IEnumerable<string> Broken(
        ImmutableArray<string> words,
        FoodSheet sheet,
        ImmutableArray<Allergen> allergens
    )
    {
        var milk = allergens.Contains(Allergen.Milk);
        var flesh = (sheet.Traits & (FoodTraits.Meat | FoodTraits.Seafood)) != FoodTraits.None;
        if (IsCalledGlutenFree(sheet) && allergens.Any(Gluten.Contains))
            yield return "It is called gluten-free, yet wheat, barley or rye is among the allergens.";
        if (Says(words, "vegetarian") && flesh)
            yield return "It is called vegetarian, yet it holds meat, gelatine, fish or shellfish.";
        if (
            IsCalledVegan(words)
            && (
                flesh
                || milk
                || allergens.Contains(Allergen.Eggs)
                || sheet.Traits.HasFlag(FoodTraits.AnimalProduct)
            )
        )
            yield return "It is called vegan, yet something in it comes from animals.";
        if (Says(words, "lactose", "free") && milk && sheet.Per100G.LactoseG is null or > 0.1m)
            yield return "It is called lactose-free: with milk in it, lactose must be said and at most 0.1 g.";
        if ((Says(words, "dairy", "free") || Says(words, "milk", "free")) && milk)
            yield return "It is called free of milk, yet milk is among the allergens.";
        foreach (var (allergen, names) in GivenAway)
            if (allergens.Contains(allergen) && names.Any(name => Says(words, name, "free")))
                yield return $"The name says free of {names[0]}, yet it is among the allergens.";
    }

    private static IEnumerable<FoodFault> Forgotten(
        ImmutableArray<string> words,
        ImmutableArray<Allergen> allergens
    ) =>
        from given in GivenAway
        where !allergens.Contains(given.Allergen) && !Excuses(words, given.Allergen)
        let word = given.Words.FirstOrDefault(w => Says(words, w) && !Says(words, w, "free"))
        where word is not null
        select new FoodFault(
            FoodField.Allergens,
            $"The name says “{word}”, and {given.Allergen.InWords()} is not among the allergens. Is that right?",
            IsWarning: true
        );

    // gluten-free bread and vegan cheese are called what they stand in for
    private static bool Excuses(ImmutableArray<string> words, Allergen allergen) =>
        allergen switch
        {
            Allergen.Wheat or Allergen.Barley or Allergen.Rye => Says(words, "gluten", "free"),
            Allergen.Milk or Allergen.Eggs or Allergen.Fish or Allergen.Crustaceans =>
                IsCalledVegan(words)
                    || (
                        allergen == Allergen.Milk
                        && (Says(words, "dairy", "free") || Says(words, "milk", "free"))
                    ),
            _ => false,
        };

    private static bool IsCalledVegan(ImmutableArray<string> words) =>
        Says(words, "vegan") || Says(words, "plant", "based");

    private static ImmutableArray<string> WordsOf(FoodSheet sheet) =>
        NameWords.Of($"{sheet.Name} {sheet.UsName}");

    private static bool Says(ImmutableArray<string> words, params ReadOnlySpan<string> phrase)
    {
        for (var i = 0; i + phrase.Length <= words.Length; i++)
            if (words.AsSpan(i, phrase.Length).SequenceEqual(phrase))
                return true;
        return false;
    }
}
