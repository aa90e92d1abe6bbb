using System.Collections.Immutable;

namespace Practice.Domain.Foods.Own;

/// <summary>How a practice says a food is served. Pieces, grams or millilitres, whatever its style counts in.</summary>
public sealed record ServingSheet
{
    /// <summary>Counted, weighed or poured.</summary>
    public ServingStyle? Style { get; init; }

    /// <summary>What one piece is called, of a counted food.</summary>
    public string Unit { get; init; } = "";

    /// <summary>What several pieces are called.</summary>
    public string UnitPlural { get; init; } = "";

    /// <summary>What one piece is called in US words where they differ.</summary>
    public string? UsUnit { get; init; }

    /// <summary>What several pieces are called in US words.</summary>
    public string? UsUnitPlural { get; init; }

    /// <summary>What one piece weighs, g; of a drink what 100 ml weigh, null for the usual density.</summary>
    public decimal? Grams { get; init; }

    /// <summary>Whether a piece can be cut and the rest kept.</summary>
    public bool CanBeHalved { get; init; }

    /// <summary>The smallest helping.</summary>
    public decimal? Least { get; init; }

    /// <summary>The largest helping.</summary>
    public decimal? Most { get; init; }

    /// <summary>Household measures to say a weighed or poured amount with.</summary>
    public ImmutableArray<HouseholdMeasure> Measures { get; init; } = [];

    /// <summary>By how much a helping grows: pieces, grams or millilitres; null where the helpings fit no step.</summary>
    internal decimal? Step =>
        Style switch
        {
            ServingStyle.Counted => Fitting(CanBeHalved ? [0.5m] : [1m]),
            ServingStyle.Weighed => Fitting([50, 25, 20, 10, 5]),
            ServingStyle.Poured => Fitting([50]),
            _ => null,
        };

    /// <summary>The serving; of a sheet that was found right.</summary>
    /// <param name="carbohydrateAndProteinG">Of 100 g: what makes a drink heavier than water.</param>
    internal Serving Read(decimal carbohydrateAndProteinG)
    {
        var step = Step!.Value;
        var (first, last) = ((int)(Least!.Value / step), (int)(Most!.Value / step));
        var (unit, plural) = Style switch
        {
            ServingStyle.Weighed => ("g", "g"),
            ServingStyle.Poured => ("ml", "ml"),
            _ => (Unit, UnitPlural),
        };
        return new Serving
        {
            Style = Style!.Value,
            StepGrams =
                step
                * Style switch
                {
                    ServingStyle.Weighed => 1,
                    ServingStyle.Poured => Density(carbohydrateAndProteinG),
                    _ => Grams!.Value,
                },
            UnitsPerStep = step,
            Unit = unit,
            UnitPlural = plural,
            UsUnit = UsUnit,
            UsUnitPlural = UsUnitPlural,
            Steps = [.. Enumerable.Range(first, last - first + 1)],
            Measures = Measures,
        };
    }

    /// <summary>What a millilitre weighs, g; where it is not said, as the library reckons it (docs/foods.md).</summary>
    internal decimal Density(decimal carbohydrateAndProteinG) =>
        Grams is { } of100Ml
            ? of100Ml / 100
            : Math.Round(
                1
                    + 0.00386m * carbohydrateAndProteinG
                    + 0.0000128m * carbohydrateAndProteinG * carbohydrateAndProteinG,
                3
            );

    private decimal? Fitting(decimal[] steps)
    {
        foreach (var step in steps)
            if (Least % step == 0 && Most % step == 0)
                return step;
        return null;
    }
}
