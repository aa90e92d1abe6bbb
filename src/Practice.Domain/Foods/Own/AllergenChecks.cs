using System.Collections.Immutable;

namespace Practice.Domain.Foods.Own;

/// <summary>
/// Whether what is said of allergens agrees with what is said of diets, with the name and with the figures. What
/// contradicts itself is refused: nobody can tell which of the two is true.
/// </summary>
internal static class AllergenChecks
{
    private const string Unsaid =
        "Say what it holds, or that it holds none of them. Read the label; it always wins.";

    public static IEnumerable<FoodFault> Of(FoodSheet sheet) =>
        sheet.Allergens is { } allergens
            ?
            [
                .. Diets(allergens, sheet.Traits),
                .. Oats(allergens, sheet),
                .. Lactose(allergens, sheet.Per100G),
                .. NameClaims.Of(sheet, allergens),
            ]
            : [new FoodFault(FoodField.Allergens, Unsaid)];

    private static IEnumerable<FoodFault> Diets(
        ImmutableArray<Allergen> allergens,
        FoodTraits traits
    )
    {
        var fromTheSea = allergens.Any(a =>
            a is Allergen.Fish or Allergen.Crustaceans or Allergen.Molluscs
        );
        if (fromTheSea && !traits.HasFlag(FoodTraits.Seafood))
            yield return new(
                FoodField.Traits,
                "Fish or shellfish is among the allergens: say that it holds fish or shellfish too, so that vegetarians are not served it."
            );
        if (!fromTheSea && traits.HasFlag(FoodTraits.Seafood))
            yield return new(
                FoodField.Allergens,
                "It holds fish or shellfish: say which, fish, crustaceans or molluscs."
            );
        if ((traits & (FoodTraits.Pork | FoodTraits.Beef)) != 0 && !traits.HasFlag(FoodTraits.Meat))
            yield return new(
                FoodField.Traits,
                "Pork and beef are meat: say that it holds meat too."
            );
    }

    private static IEnumerable<FoodFault> Oats(ImmutableArray<Allergen> allergens, FoodSheet sheet)
    {
        var (oats, uncertified) = (
            allergens.Contains(Allergen.Oats),
            sheet.Traits.HasFlag(FoodTraits.UncertifiedOats)
        );
        if (uncertified && !oats)
            yield return new(
                FoodField.Allergens,
                "It holds uncertified oats, yet oats are not among the allergens."
            );
        if (oats && !uncertified && !NameClaims.IsCalledGlutenFree(sheet))
            yield return new(
                FoodField.Traits,
                "Oats: say that they are not certified gluten-free. If they are, say “gluten-free” in the name."
            );
    }

    private static IEnumerable<FoodFault> Lactose(
        ImmutableArray<Allergen> allergens,
        LabelFigures figures
    ) =>
        figures.LactoseG > 0 && !allergens.Contains(Allergen.Milk)
            ?
            [
                new(
                    FoodField.Allergens,
                    "It has lactose, which comes of milk only, yet milk is not among the allergens."
                ),
            ]
            : [];
}
