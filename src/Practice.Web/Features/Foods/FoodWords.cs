using Practice.Domain.Foods;
using Practice.Web.Parts;

namespace Practice.Web.Features.Foods;

/// <summary>Foods in the words of whoever writes one down.</summary>
internal static class FoodWords
{
    public static string Of(FoodTraits trait) =>
        trait switch
        {
            FoodTraits.Meat => "Holds meat or gelatine",
            FoodTraits.Pork => "Holds pork, or may",
            FoodTraits.Beef => "Holds beef, or may",
            FoodTraits.Seafood => "Holds fish or shellfish",
            FoodTraits.AnimalProduct => "Holds honey or the like",
            FoodTraits.Alcohol => "Holds alcohol",
            FoodTraits.Sweetener => "Polyols or aspartame in it",
            FoodTraits.RawAnimal => "Raw or unpasteurised",
            FoodTraits.UncertifiedOats => "Oats not certified gluten-free",
            FoodTraits.HighFodmap => "High in FODMAPs",
            FoodTraits.HighResidue => "Wholegrain, pulses, seeds, skins",
            FoodTraits.Sugary => "Sugar carries it",
            FoodTraits.Confectionery => "Sweets or chocolate",
            FoodTraits.SportsProduct => "Made for sport",
            FoodTraits.Substitute => "Only for those who need it",
            _ => Say.Words(trait),
        };

    /// <summary>All traits there are, who must not have it first.</summary>
    public static IReadOnlyList<FoodTraits> Traits { get; } =
    [
        FoodTraits.Meat,
        FoodTraits.Pork,
        FoodTraits.Beef,
        FoodTraits.Seafood,
        FoodTraits.AnimalProduct,
        FoodTraits.Alcohol,
        FoodTraits.Sweetener,
        FoodTraits.RawAnimal,
        FoodTraits.UncertifiedOats,
        FoodTraits.HighFodmap,
        FoodTraits.HighResidue,
        FoodTraits.Sugary,
        FoodTraits.Confectionery,
        FoodTraits.SportsProduct,
        FoodTraits.Substitute,
    ];

    public static string Of(ServingStyle style) =>
        style switch
        {
            ServingStyle.Counted => "Counted in pieces or spoons",
            ServingStyle.Weighed => "Weighed",
            _ => "Poured",
        };

    /// <summary>wheat, milk; none of the 14</summary>
    public static string Allergens(IReadOnlyCollection<Allergen> allergens) =>
        allergens.Count == 0
            ? "None of the 14"
            : string.Join(", ", allergens.Select(a => Say.Words(a)));
}
