using System.Collections.Immutable;

namespace Practice.Domain.Foods;

/// <summary>How a portion is measured out in a kitchen.</summary>
public enum ServingStyle
{
    /// <summary>Counted in pieces or level spoons: slices, bagels, eggs, tablespoons.</summary>
    Counted,

    /// <summary>Weighed in grams, with an everyday measure beside it: cooked rice, pasta.</summary>
    Weighed,

    /// <summary>Poured in millilitres: drinks.</summary>
    Poured,
}

/// <summary>Which kitchen words a reader uses.</summary>
public enum HouseholdUnits
{
    /// <summary>Grams, millilitres, UK words.</summary>
    Metric,

    /// <summary>Cups, fluid ounces, US words.</summary>
    UsCustomary,
}

/// <summary>A household measure and what it weighs.</summary>
/// <param name="Name">One of it, such as <c>cup</c> or <c>large glass</c>.</param>
/// <param name="Plural">Several of it.</param>
/// <param name="Grams">What one holds, g.</param>
/// <param name="Units">Whose kitchen word it is; null for everyone's.</param>
/// <param name="IsOwn">Whether a practice added it: where it comes near it goes before the library's.</param>
public sealed record HouseholdMeasure(
    string Name,
    string Plural,
    decimal Grams,
    HouseholdUnits? Units = null,
    bool IsOwn = false
);

/// <summary>
/// The steps in which a portion grows. A step is half a bagel, one slice, 50 g of cooked rice or 50 ml of juice; an
/// amount is a whole number of steps out of <see cref="Steps"/>.
/// </summary>
public sealed record Serving
{
    /// <summary>How it is measured out.</summary>
    public required ServingStyle Style { get; init; }

    /// <summary>What one step weighs, g.</summary>
    public required decimal StepGrams { get; init; }

    /// <summary>How many <see cref="Unit"/>s one step is: 0.5 for half a bagel, 50 for 50 ml.</summary>
    public required decimal UnitsPerStep { get; init; }

    /// <summary>The unit in the singular: <c>slice</c>, <c>bagel</c>, <c>g</c>, <c>ml</c>.</summary>
    public required string Unit { get; init; }

    /// <summary>The unit in the plural.</summary>
    public required string UnitPlural { get; init; }

    /// <summary>The unit in US words where they differ: <c>cookie</c> for biscuit.</summary>
    public string? UsUnit { get; init; }

    /// <summary>The plural of <see cref="UsUnit"/>.</summary>
    public string? UsUnitPlural { get; init; }

    /// <summary>The step counts a person would serve, ascending; half eggs and nine slices are not among them.</summary>
    public required ImmutableArray<int> Steps { get; init; }

    /// <summary>Everyday measures to say a weighed or poured amount with.</summary>
    public ImmutableArray<HouseholdMeasure> Measures { get; init; } = [];

    /// <summary>The smallest serving, in steps.</summary>
    public int MinSteps => Steps[0];

    /// <summary>The largest serving, in steps.</summary>
    public int MaxSteps => Steps[^1];

    /// <summary>The unit in the reader's words.</summary>
    public string UnitIn(HouseholdUnits units) =>
        units == HouseholdUnits.UsCustomary ? UsUnit ?? Unit : Unit;

    /// <summary>The unit's plural in the reader's words.</summary>
    public string UnitPluralIn(HouseholdUnits units) =>
        units == HouseholdUnits.UsCustomary ? UsUnitPlural ?? UnitPlural : UnitPlural;

    /// <summary>Records with collections compare by content.</summary>
    public bool Equals(Serving? other) =>
        other is not null
        && Style == other.Style
        && StepGrams == other.StepGrams
        && UnitsPerStep == other.UnitsPerStep
        && Unit == other.Unit
        && UnitPlural == other.UnitPlural
        && UsUnit == other.UsUnit
        && UsUnitPlural == other.UsUnitPlural
        && Steps.SequenceEqual(other.Steps)
        && Measures.SequenceEqual(other.Measures);

    /// <inheritdoc />
    public override int GetHashCode() =>
        HashCode.Combine(Style, StepGrams, UnitsPerStep, Unit, Steps.Length);
}
