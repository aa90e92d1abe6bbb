using System.Collections.Immutable;

namespace Practice.Domain.Foods.Own;

/// <summary>
/// A food as a practice writes it down: what its label says, how it is served, who must not have it. Whether it makes
/// sense, <see cref="FoodSheetChecks"/> tells.
/// </summary>
public sealed record FoodSheet
{
    /// <summary>Name in UK words.</summary>
    public string Name { get; init; } = "";

    /// <summary>Name in US words where it differs.</summary>
    public string? UsName { get; init; }

    /// <summary>Section of the shopping list.</summary>
    public FoodGroup? Group { get; init; }

    /// <summary>A family of the library that it counts as; null for a thing of its own.</summary>
    public string? Family { get; init; }

    /// <summary>What 100 g of it hold, as eaten.</summary>
    public LabelFigures Per100G { get; init; } = new();

    /// <summary>How it is served.</summary>
    public ServingSheet Serving { get; init; } = new();

    /// <summary>Allergens it holds, empty for none of them; null as long as nobody has said.</summary>
    public ImmutableArray<Allergen>? Allergens { get; init; }

    /// <summary>What diets care about.</summary>
    public FoodTraits Traits { get; init; }

    /// <summary>Parts it plays in meals.</summary>
    public ImmutableArray<MealRole> Roles { get; init; } = [];

    /// <summary>Sittings it suits.</summary>
    public ImmutableArray<OccasionKind> Occasions { get; init; } = [];

    /// <summary>Where its facts come from: the label, a maker's sheet, a recipe.</summary>
    public string Source { get; init; } = "";

    /// <summary>The food, to be served like any of the library; of a sheet without errors.</summary>
    /// <param name="id">Key of the food.</param>
    internal Food Read(string id)
    {
        var allergens = Allergens!.Value;
        var nutrients = Per100G.Read(allergens.Contains(Allergen.Milk));
        var serving = Serving.Read(nutrients.CarbohydrateG + nutrients.ProteinG);
        return new Food
        {
            Id = id,
            Name = Name,
            UsName = UsName,
            Group = Group!.Value,
            Family = Family ?? id,
            IsLiquid = serving.Style == ServingStyle.Poured,
            Per100G = nutrients,
            Serving = serving,
            Allergens = allergens,
            Traits = Traits,
            Roles = [.. Roles.Select(role => UsualCover.Of(role, serving.StepGrams))],
            Occasions = Occasions,
            Origin = new FoodOrigin(OwnFood.Dataset, null, Source.Length == 0 ? null : Source),
        };
    }
}
