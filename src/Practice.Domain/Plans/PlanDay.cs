using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Foods;

namespace Practice.Domain.Plans;

/// <summary>What a day of the plan must keep to. All of it can be relaxed by the practitioner; holds and allergens
/// are not here, they are taken out of the foods beforehand.</summary>
public sealed record DayLimits
{
    /// <summary>Carbohydrate of the day, g; kept within <see cref="CarbohydrateTolerance"/>.</summary>
    public required decimal CarbohydrateAimG { get; init; }

    /// <summary>Allowed deviation of the day's carbohydrate, as a fraction; 0.02 by default.</summary>
    public decimal CarbohydrateTolerance { get; init; } = 0.02m;

    /// <summary>Allowed deviation of a sitting's carbohydrate, as a fraction of its aim; at least 8 g is allowed.</summary>
    public decimal OccasionTolerance { get; init; } = 0.15m;

    /// <summary>Fibre ceiling, g.</summary>
    public required decimal FibreMaxG { get; init; }

    /// <summary>Fat ceiling, g.</summary>
    public required decimal FatMaxG { get; init; }

    /// <summary>Fat ceiling as a fraction of energy.</summary>
    public decimal FatMaxEnergyShare { get; init; } = 0.25m;

    /// <summary>Protein floor, g.</summary>
    public required decimal ProteinMinG { get; init; }

    /// <summary>Protein ceiling, g.</summary>
    public required decimal ProteinMaxG { get; init; }

    /// <summary>Share of carbohydrate drunk: lower end.</summary>
    public decimal DrinksShareMin { get; init; } = 0.20m;

    /// <summary>Share of carbohydrate drunk: aim.</summary>
    public decimal DrinksShareAim { get; init; } = 0.30m;

    /// <summary>Share of carbohydrate drunk: upper end.</summary>
    public decimal DrinksShareMax { get; init; } = 0.40m;

    /// <summary>Share of carbohydrate from sugary foods: upper end.</summary>
    public decimal SugaryShareMax { get; init; } = 0.38m;

    /// <summary>Sodium floor, mg; zero when sodium advice is switched off.</summary>
    public decimal SodiumMinMg { get; init; }

    /// <summary>Sodium ceiling, mg.</summary>
    public required decimal SodiumMaxMg { get; init; }

    /// <summary>Fructose ceiling of one sitting, g.</summary>
    public decimal FructoseMaxPerOccasionG { get; init; } = 50m;

    /// <summary>Lactose ceiling of one sitting, g; null for none.</summary>
    public decimal? LactoseMaxPerOccasionG { get; init; }

    /// <summary>Lactose ceiling of the day, g; null for none.</summary>
    public decimal? LactoseMaxPerDayG { get; init; }

    /// <summary>How much oftener than usual a food, a kind of food or a meal may come in the day; 0 by default.</summary>
    public int MoreRepeats { get; init; }

    /// <summary>Weight of food and drink at one main meal, g; snacks and supper a part of it.</summary>
    public required decimal OccasionWeightMaxG { get; init; }
}

/// <summary>A day, or a part of one, in the loading window.</summary>
public sealed record PlanDay
{
    /// <summary>The date.</summary>
    public required LocalDate Date { get; init; }

    /// <summary>Days before the race: 1 is the eve.</summary>
    public required int DaysBefore { get; init; }

    /// <summary>What fraction of a full day's carbohydrate it brings, above 0 to 1.</summary>
    public required decimal Share { get; init; }

    /// <summary>What it must keep to.</summary>
    public required DayLimits Limits { get; init; }

    /// <summary>Its sittings in order.</summary>
    public required ImmutableArray<Occasion> Occasions { get; init; }

    /// <summary>Nutrients of the day.</summary>
    public Nutrients Totals =>
        Occasions.Aggregate(Nutrients.Zero, (sum, occasion) => sum + occasion.Totals);

    /// <summary>Carbohydrate drunk, as a fraction of all; zero for an empty day.</summary>
    public decimal DrinksShare
    {
        get
        {
            var all = Totals.CarbohydrateG;
            var drunk = Occasions
                .SelectMany(o => o.Portions)
                .Where(p => p.IsLiquid)
                .Sum(p => p.Nutrients.CarbohydrateG);
            return all == 0 ? 0 : drunk / all;
        }
    }

    /// <summary>A sitting of the day.</summary>
    /// <exception cref="InvalidOperationException">The day has no such sitting.</exception>
    public Occasion this[OccasionKind kind] => Occasions.Single(o => o.Kind == kind);

    /// <summary>The day with one sitting replaced.</summary>
    public PlanDay With(Occasion occasion) =>
        this with
        {
            Occasions = [.. Occasions.Select(o => o.Kind == occasion.Kind ? occasion : o)],
        };

    /// <summary>Days compare by content.</summary>
    public bool Equals(PlanDay? other) =>
        other is not null
        && Date == other.Date
        && DaysBefore == other.DaysBefore
        && Share == other.Share
        && Limits == other.Limits
        && Occasions.SequenceEqual(other.Occasions);

    /// <inheritdoc />
    public override int GetHashCode() => HashCode.Combine(Date, Share, Limits, Occasions.Length);
}
