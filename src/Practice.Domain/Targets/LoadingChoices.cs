using System.Collections.Immutable;
using Practice.Domain.Foods;

namespace Practice.Domain.Targets;

/// <summary>What the practitioner chose before the numbers are computed.</summary>
public sealed record LoadingChoices
{
    /// <summary>Carbohydrate per 24 h, g/kg; null for the guideline default of the client's case.</summary>
    public decimal? CarbohydrateGPerKg { get; init; }

    /// <summary>Length of the loading window before race morning, h: 24 to 96; 36 by default.</summary>
    public int WindowHours { get; init; } = 36;

    /// <summary>Sittings on a full day, 5 to 7.</summary>
    public int OccasionsPerDay { get; init; } = 6;

    /// <summary>A practice's own spread of a full day; counts where it has as many sittings, else the house's does.</summary>
    public ImmutableArray<Sitting> Sittings { get; init; } = [];

    /// <summary>Share of the carbohydrate that is drunk, 0 to 0.5.</summary>
    public decimal DrinksShare { get; init; } = 0.30m;

    /// <summary>The sittings of a full day: the practice's own spread where it has as many, else the house's.</summary>
    public ImmutableArray<Sitting> FullDay =>
        Sittings.Length == OccasionsPerDay ? Sittings : DayShape.Of(OccasionsPerDay);

    /// <summary>Values that replace computed ones.</summary>
    public ImmutableArray<TargetOverride> Overrides { get; init; } = [];
}
