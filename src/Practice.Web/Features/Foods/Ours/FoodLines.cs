using System.Collections.Immutable;
using Practice.Domain.Foods;
using Practice.Domain.Foods.Own;
using Practice.Domain.Quantities;
using Practice.Web.Parts;
using Practice.Web.Parts.Notices;

namespace Practice.Web.Features.Foods.Ours;

/// <summary>A food of the practice's own as lines of name and value, to lay two versions side by side.</summary>
internal static class FoodLines
{
    public static ImmutableArray<FactLine> Of(FoodSheet sheet)
    {
        var (per100G, serving) = (sheet.Per100G, sheet.Serving);
        return
        [
            new("Name", sheet.Name),
            new("US name", sheet.UsName ?? ""),
            new("Section", sheet.Group is { } group ? Say.Words(group) : ""),
            new("Same kind as", sheet.Family is { } family ? FoodFamilies.Name(family) : ""),
            new("Energy, kcal", Figure(per100G.EnergyKcal)),
            new("Carbohydrate, g", Figure(per100G.CarbohydrateG)),
            new("Sugars, g", Figure(per100G.SugarsG)),
            new("Glucose, g", Figure(per100G.GlucoseG)),
            new("Fructose, g", Figure(per100G.FructoseG)),
            new("Sucrose, g", Figure(per100G.SucroseG)),
            new("Lactose, g", Figure(per100G.LactoseG)),
            new("Fibre, g", Figure(per100G.FibreG)),
            new("Protein, g", Figure(per100G.ProteinG)),
            new("Fat, g", Figure(per100G.FatG)),
            new("Sodium, mg", Figure(per100G.SodiumMg)),
            new("Potassium, mg", Figure(per100G.PotassiumMg)),
            new("Water, g", Figure(per100G.WaterG)),
            new("Caffeine, mg", Figure(per100G.CaffeineMg)),
            new("Measured out", serving.Style is { } style ? FoodWords.Of(style) : ""),
            new("Unit", $"{serving.Unit}, {serving.UnitPlural}"),
            new("US unit", $"{serving.UsUnit}, {serving.UsUnitPlural}"),
            new("Weighs, g", Figure(serving.Grams)),
            new("Halves", serving.CanBeHalved ? "yes" : "no"),
            new("Helpings", $"{Figure(serving.Least)} to {Figure(serving.Most)}"),
            new(
                "Measures",
                string.Join(", ", serving.Measures.Select(m => $"{m.Name} {Figure(m.Grams)} g"))
            ),
            new("Allergens", sheet.Allergens is { } said ? FoodWords.Allergens(said) : ""),
            new(
                "Diets and menus",
                string.Join(
                    ", ",
                    FoodWords.Traits.Where(t => sheet.Traits.HasFlag(t)).Select(FoodWords.Of)
                )
            ),
            new("Served as", string.Join(", ", sheet.Roles.Select(r => Say.Words(r)))),
            new("Served at", string.Join(", ", sheet.Occasions.Select(Say.Name))),
            new("Source", sheet.Source),
        ];
    }

    /// <summary>1 to 3 bars of 45 g; 100 to 350 g</summary>
    public static string Helpings(ServingSheet serving)
    {
        var range = $"{Figure(serving.Least)} to {Figure(serving.Most)}";
        return serving.Style switch
        {
            ServingStyle.Counted => $"{range} {serving.UnitPlural} of {Figure(serving.Grams)} g",
            ServingStyle.Weighed => $"{range} g",
            ServingStyle.Poured => $"{range} ml",
            _ => "",
        };
    }

    private static string Figure(decimal? figure) =>
        figure is { } known ? Rounding.Shown(known, known % 1 == 0 ? 0 : 2) : "";
}
