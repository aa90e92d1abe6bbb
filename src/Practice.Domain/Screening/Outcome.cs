using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Evidence;
using Practice.Domain.Foods;

namespace Practice.Domain.Screening;

/// <summary>Blocks issuing a plan until a named professional's clearance is on file.</summary>
/// <param name="Key">Stable key, such as <c>diabetes-insulin</c>.</param>
/// <param name="Title">Short name.</param>
/// <param name="Reason">Why it blocks and what clearance is needed, from whom.</param>
/// <param name="Source">Where the rule comes from.</param>
public sealed record Hold(string Key, string Title, string Reason, Source Source);

/// <summary>A professional's word that lifts one hold.</summary>
/// <param name="HoldKey">Key of the hold.</param>
/// <param name="By">Who cleared it, with profession.</param>
/// <param name="On">Date of the clearance.</param>
/// <param name="ExpiresOn">Last day it holds.</param>
/// <param name="WhatWasSaid">Scope and conditions.</param>
public sealed record Clearance(
    string HoldKey,
    string By,
    LocalDate On,
    LocalDate ExpiresOn,
    string WhatWasSaid
);

/// <summary>A text that goes on screen and paper.</summary>
/// <param name="Key">Stable key.</param>
/// <param name="Text">What to say, in plain words and without numbers with units.</param>
/// <param name="ForClient">Whether the client reads it too, or only the practitioner.</param>
/// <param name="Source">Where the rule comes from.</param>
public sealed record Caution(string Key, string Text, bool ForClient, Source Source);

/// <summary>Numbers and foods that screening changes by itself.</summary>
public sealed record Adjustments
{
    /// <summary>No change.</summary>
    public static Adjustments None { get; } = new();

    /// <summary>Handouts and phone show no number with a unit.</summary>
    public bool NumberFree { get; init; }

    /// <summary>No weighing and no advice that needs it.</summary>
    public bool NoWeighing { get; init; }

    /// <summary>No advice to add salt.</summary>
    public bool NoAddedSodium { get; init; }

    /// <summary>No low-residue restriction.</summary>
    public bool NoLowResidue { get; init; }

    /// <summary>Drink to thirst only: no drinking plan.</summary>
    public bool ThirstOnly { get; init; }

    /// <summary>The protein floor of the general population must not be applied.</summary>
    public bool NoProteinFloor { get; init; }

    /// <summary>Lowest carbohydrate rate to choose, g/kg/day; null for the general rule.</summary>
    public decimal? CarbohydrateRateLow { get; init; }

    /// <summary>Highest carbohydrate rate to choose, g/kg/day; null for the general rule.</summary>
    public decimal? CarbohydrateRateHigh { get; init; }

    /// <summary>Caffeine of a day, mg; null for the general limit, zero for none.</summary>
    public decimal? CaffeineMaxMgPerDay { get; init; }

    /// <summary>Foods with these are never served.</summary>
    public ImmutableHashSet<Allergen> ExcludedAllergens { get; init; } = [];

    /// <summary>Foods with any of these traits are never served.</summary>
    public FoodTraits ExcludedTraits { get; init; }

    /// <summary>Lactose of one sitting, g; null for no limit, zero for none at all.</summary>
    public decimal? LactoseMaxPerOccasionG { get; init; }

    /// <summary>Lactose of a day, g.</summary>
    public decimal? LactoseMaxPerDayG { get; init; }

    /// <summary>Fructose of one sitting, g; null for the general limit.</summary>
    public decimal? FructoseMaxPerOccasionG { get; init; }

    /// <summary>Foods with any fructose or sucrose are never served (hereditary intolerance).</summary>
    public bool NoFructoseAtAll { get; init; }

    /// <summary>Weight of a sitting is cut to this fraction (early fullness), 0.5 to 1.</summary>
    public decimal OccasionWeightFactor { get; init; } = 1m;
}

/// <summary>What the answers mean.</summary>
/// <param name="Holds">What blocks issuing, cleared or not.</param>
/// <param name="Cautions">What is said on screen and paper.</param>
/// <param name="Adjustments">What changes by itself.</param>
public sealed record ScreeningOutcome(
    ImmutableArray<Hold> Holds,
    ImmutableArray<Caution> Cautions,
    Adjustments Adjustments
);
