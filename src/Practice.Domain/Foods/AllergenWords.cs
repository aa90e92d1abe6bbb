namespace Practice.Domain.Foods;

/// <summary>Allergens as people say them.</summary>
public static class AllergenWords
{
    /// <summary>In small letters, within a sentence.</summary>
    public static string InWords(this Allergen allergen) =>
        allergen == Allergen.TreeNuts ? "tree nuts" : allergen.ToString().ToLowerInvariant();
}
