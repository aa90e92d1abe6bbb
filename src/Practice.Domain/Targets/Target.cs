using NodaTime;
using Practice.Domain.Evidence;

namespace Practice.Domain.Targets;

/// <summary>
/// A computed number with its unit, its allowed band and its basis. Values are unrounded; <c>TargetWords</c> rounds.
/// </summary>
public sealed record Target
{
    /// <summary>Stable key, such as <c>carbohydrate-per-day</c>.</summary>
    public required string Key { get; init; }

    /// <summary>Name in the trade's words.</summary>
    public required string Name { get; init; }

    /// <summary>What to aim at; null for a pure ceiling, floor or band.</summary>
    public decimal? Aim { get; init; }

    /// <summary>Lower end of the allowed band.</summary>
    public decimal? Low { get; init; }

    /// <summary>Upper end of the allowed band.</summary>
    public decimal? High { get; init; }

    /// <summary>Unit as shown: <c>g/day</c>, <c>g/kg/day</c>, <c>%</c>, <c>kg</c>.</summary>
    public required string Unit { get; init; }

    /// <summary>Decimals to show, 0 to 3.</summary>
    public int Decimals { get; init; }

    /// <summary>Why the number is what it is.</summary>
    public required Basis Basis { get; init; }

    /// <summary>Set when a practitioner overrode the computed value.</summary>
    public TargetOverride? Override { get; init; }
}

/// <summary>A practitioner's own value for a target. Kept with who, when and why.</summary>
/// <param name="Key">Key of the target.</param>
/// <param name="Value">The value that replaces the aim.</param>
/// <param name="Computed">What the tool had computed.</param>
/// <param name="By">Who decided.</param>
/// <param name="At">When.</param>
/// <param name="Reason">Why; never empty.</param>
public sealed record TargetOverride(
    string Key,
    decimal Value,
    decimal? Computed,
    string By,
    Instant At,
    string Reason
);
