using System.Collections.Immutable;
using Practice.Domain.Foods;

namespace Practice.Domain.Screening;

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

    /// <summary>Carbohydrate taken during the race, g/h; null for the general rule.</summary>
    public decimal? RaceCarbohydrateMaxGPerHour { get; init; }

    /// <summary>Fructose taken during the race, g/h; null for the general rule.</summary>
    public decimal? RaceFructoseMaxGPerHour { get; init; }

    /// <summary>Caffeine of a day, mg; null for the general limit, zero for a plan that brings none.</summary>
    public decimal? CaffeineMaxMgPerDay { get; init; }

    /// <summary>Caffeine taken at once, mg; null for the general limit.</summary>
    public decimal? CaffeineMaxMgPerIntake { get; init; }

    /// <summary>No caffeine for the race, whatever the day allows.</summary>
    public bool NoRaceCaffeine { get; init; }

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

    /// <summary>Foods with any sucrose are never served; fructose is allowed (sucrase-isomaltase
    /// deficiency).</summary>
    public bool NoSucroseAtAll { get; init; }

    /// <summary>Weight of a sitting is cut to this fraction (early fullness), 0.5 to 1.</summary>
    public decimal OccasionWeightFactor { get; init; } = 1m;

    /// <summary>
    /// Both sets of adjustments at once. The stricter value wins: what either forbids is forbidden, and of two
    /// limits the lower one holds. The order does not matter.
    /// </summary>
    public Adjustments And(Adjustments other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return new()
        {
            NumberFree = NumberFree || other.NumberFree,
            NoWeighing = NoWeighing || other.NoWeighing,
            NoAddedSodium = NoAddedSodium || other.NoAddedSodium,
            NoLowResidue = NoLowResidue || other.NoLowResidue,
            ThirstOnly = ThirstOnly || other.ThirstOnly,
            NoProteinFloor = NoProteinFloor || other.NoProteinFloor,
            NoRaceCaffeine = NoRaceCaffeine || other.NoRaceCaffeine,
            NoFructoseAtAll = NoFructoseAtAll || other.NoFructoseAtAll,
            NoSucroseAtAll = NoSucroseAtAll || other.NoSucroseAtAll,
            // the low end of a rate is a floor: the lower floor leaves more room to go down
            CarbohydrateRateLow = Lower(CarbohydrateRateLow, other.CarbohydrateRateLow),
            CarbohydrateRateHigh = Lower(CarbohydrateRateHigh, other.CarbohydrateRateHigh),
            RaceCarbohydrateMaxGPerHour = Lower(
                RaceCarbohydrateMaxGPerHour,
                other.RaceCarbohydrateMaxGPerHour
            ),
            RaceFructoseMaxGPerHour = Lower(RaceFructoseMaxGPerHour, other.RaceFructoseMaxGPerHour),
            CaffeineMaxMgPerDay = Lower(CaffeineMaxMgPerDay, other.CaffeineMaxMgPerDay),
            CaffeineMaxMgPerIntake = Lower(CaffeineMaxMgPerIntake, other.CaffeineMaxMgPerIntake),
            LactoseMaxPerOccasionG = Lower(LactoseMaxPerOccasionG, other.LactoseMaxPerOccasionG),
            LactoseMaxPerDayG = Lower(LactoseMaxPerDayG, other.LactoseMaxPerDayG),
            FructoseMaxPerOccasionG = Lower(FructoseMaxPerOccasionG, other.FructoseMaxPerOccasionG),
            ExcludedAllergens = ExcludedAllergens.Union(other.ExcludedAllergens),
            ExcludedTraits = ExcludedTraits | other.ExcludedTraits,
            OccasionWeightFactor = Math.Min(OccasionWeightFactor, other.OccasionWeightFactor),
        };
    }

    private static decimal? Lower(decimal? left, decimal? right) =>
        left is { } l && right is { } r ? Math.Min(l, r) : left ?? right;
}
