namespace Practice.Domain.Physiology;

/// <summary>
/// Energy of nutrients, kcal/g, as labels reckon it; carbohydrate without fibre.
/// Source: Regulation (EU) 1169/2011 Annex XIV, from memory. Check B16.
/// </summary>
public static class FoodEnergy
{
    /// <summary>Available carbohydrate, kcal/g.</summary>
    public const decimal Carbohydrate = 4;

    /// <summary>Protein, kcal/g.</summary>
    public const decimal Protein = 4;

    /// <summary>Fat, kcal/g.</summary>
    public const decimal Fat = 9;

    /// <summary>Fibre, kcal/g.</summary>
    public const decimal Fibre = 2;

    /// <summary>Energy, kcal, of grams of each.</summary>
    public static decimal Kcal(
        decimal carbohydrateG,
        decimal proteinG,
        decimal fatG,
        decimal fibreG
    ) => Carbohydrate * carbohydrateG + Protein * proteinG + Fat * fatG + Fibre * fibreG;
}
