using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Foods;

namespace Practice.Domain.Plans;

/// <summary>One sitting: when, how much carbohydrate it should bring, and what is on the plate.</summary>
public sealed record Occasion
{
    /// <summary>Which sitting of the day; a day holds each at most once.</summary>
    public required OccasionKind Kind { get; init; }

    /// <summary>When, in the race's clock.</summary>
    public required LocalTime Time { get; init; }

    /// <summary>Carbohydrate to aim at, g.</summary>
    public required decimal CarbohydrateAimG { get; init; }

    /// <summary>Name of the meal pattern it follows; null when built by hand or still empty.</summary>
    public string? Pattern { get; init; }

    /// <summary>What is on the plate.</summary>
    public ImmutableArray<Portion> Portions { get; init; } = [];

    /// <summary>Nutrients of the plate.</summary>
    public Nutrients Totals =>
        Portions.Aggregate(Nutrients.Zero, (sum, portion) => sum + portion.Nutrients);

    /// <summary>The portion of a food, if it is on the plate.</summary>
    public Portion? Find(string foodId) => Portions.FirstOrDefault(p => p.FoodId == foodId);

    /// <summary>Plates compare by what is on them.</summary>
    public bool Equals(Occasion? other) =>
        other is not null
        && Kind == other.Kind
        && Time == other.Time
        && CarbohydrateAimG == other.CarbohydrateAimG
        && Pattern == other.Pattern
        && Portions.SequenceEqual(other.Portions);

    /// <inheritdoc />
    public override int GetHashCode() =>
        HashCode.Combine(Kind, Time, CarbohydrateAimG, Portions.Length);
}
