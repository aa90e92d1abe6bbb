namespace Practice.Domain.Foods;

/// <summary>What is remarkable about a food, as people say it.</summary>
public static class FoodTraitWords
{
    /// <summary>In small letters, within a sentence; several with commas.</summary>
    public static string InWords(this FoodTraits traits) =>
        string.Join(", ", Enum.GetValues<FoodTraits>().Where(t => IsIn(traits, t)).Select(Word));

    private static bool IsIn(FoodTraits traits, FoodTraits trait) =>
        trait != FoodTraits.None && traits.HasFlag(trait);

    private static string Word(FoodTraits trait) =>
        trait switch
        {
            FoodTraits.Seafood => "fish or shellfish",
            FoodTraits.AnimalProduct => "an animal product",
            FoodTraits.SportsProduct => "made for sport",
            FoodTraits.Substitute => "a substitute",
            FoodTraits.HighFodmap => "rich in fermentable sugars",
            FoodTraits.Sweetener => "polyols or aspartame",
            FoodTraits.RawAnimal => "raw or unpasteurised animal food",
            FoodTraits.HighResidue => "wholegrain, bran or legume",
            FoodTraits.UncertifiedOats => "oats not certified gluten-free",
            _ => trait.ToString().ToLowerInvariant(),
        };
}
