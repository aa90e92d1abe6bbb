using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Foods;

namespace Practice.Domain.Plans;

/// <summary>A sitting as shown: whole grams that add up.</summary>
/// <param name="Kind">Which sitting.</param>
/// <param name="CarbohydrateG">Carbohydrate, g: the sum of <paramref name="PortionsG"/>.</param>
/// <param name="PortionsG">Carbohydrate of each portion in order, g.</param>
public sealed record DisplayOccasion(
    OccasionKind Kind,
    int CarbohydrateG,
    ImmutableArray<int> PortionsG
);

/// <summary>A day as shown: whole grams that add up.</summary>
/// <param name="Date">The day.</param>
/// <param name="CarbohydrateG">Carbohydrate, g: the sum of the sittings and, rounded, the day's true total.</param>
/// <param name="Occasions">Its sittings in order.</param>
public sealed record DisplayDay(
    LocalDate Date,
    int CarbohydrateG,
    ImmutableArray<DisplayOccasion> Occasions
);

/// <summary>
/// The carbohydrate figures that screen, phone and paper show. The day's true total is rounded once and then handed
/// down to sittings and portions, so that what a reader adds up is what is printed, and no figure is a gram or more
/// off the truth. A portion may therefore differ by one gram between two days. Own rule.
/// </summary>
public static class DisplayTotals
{
    /// <summary>The figures of a day.</summary>
    public static DisplayDay Of(PlanDay day)
    {
        ArgumentNullException.ThrowIfNull(day);
        var total = Apportion.Whole(day.Totals.CarbohydrateG);
        var sittings = Apportion.ToWhole(
            [.. day.Occasions.Select(o => o.Totals.CarbohydrateG)],
            total
        );
        return new(day.Date, total, [.. day.Occasions.Select((o, i) => Of(o, sittings[i]))]);
    }

    private static DisplayOccasion Of(Occasion occasion, int grams) =>
        new(
            occasion.Kind,
            grams,
            Apportion.ToWhole([.. occasion.Portions.Select(p => p.Nutrients.CarbohydrateG)], grams)
        );
}
