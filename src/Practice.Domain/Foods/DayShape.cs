using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Evidence;

namespace Practice.Domain.Foods;

/// <summary>A sitting of a full day: when, and which share of the day's carbohydrate it brings.</summary>
/// <param name="Kind">Which sitting.</param>
/// <param name="Share">Share of the day's carbohydrate, above 0 to 1.</param>
/// <param name="Time">Usual time.</param>
public sealed record Sitting(OccasionKind Kind, decimal Share, LocalTime Time);

/// <summary>
/// How a day's carbohydrate is spread: front-loaded, with a light evening so that the athlete sleeps. Common practice,
/// no source; shares of a day sum to 1. A practice may spread it otherwise.
/// </summary>
public static class DayShape
{
    /// <summary>Where the shares come from.</summary>
    public static Source Source { get; } =
        new(
            "front-loaded-day",
            "Eat more early and less in the evening: habit of practitioners.",
            Provenance.CommonPractice
        );

    private static readonly ImmutableArray<Sitting> Five =
    [
        new(OccasionKind.Breakfast, 0.27m, new LocalTime(7, 30)),
        new(OccasionKind.MorningSnack, 0.15m, new LocalTime(10, 30)),
        new(OccasionKind.Lunch, 0.27m, new LocalTime(13, 0)),
        new(OccasionKind.AfternoonSnack, 0.15m, new LocalTime(16, 0)),
        new(OccasionKind.EveningMeal, 0.16m, new LocalTime(18, 30)),
    ];

    private static readonly ImmutableArray<Sitting> Six =
    [
        new(OccasionKind.Breakfast, 0.25m, new LocalTime(7, 30)),
        new(OccasionKind.MorningSnack, 0.15m, new LocalTime(10, 30)),
        new(OccasionKind.Lunch, 0.25m, new LocalTime(13, 0)),
        new(OccasionKind.AfternoonSnack, 0.15m, new LocalTime(16, 0)),
        new(OccasionKind.EveningMeal, 0.15m, new LocalTime(18, 30)),
        new(OccasionKind.Supper, 0.05m, new LocalTime(20, 30)),
    ];

    private static readonly ImmutableArray<Sitting> Seven =
    [
        new(OccasionKind.Breakfast, 0.23m, new LocalTime(7, 0)),
        new(OccasionKind.MorningSnack, 0.12m, new LocalTime(10, 0)),
        new(OccasionKind.Lunch, 0.23m, new LocalTime(12, 30)),
        new(OccasionKind.AfternoonSnack, 0.12m, new LocalTime(15, 0)),
        new(OccasionKind.LateAfternoonSnack, 0.10m, new LocalTime(17, 0)),
        new(OccasionKind.EveningMeal, 0.15m, new LocalTime(18, 45)),
        new(OccasionKind.Supper, 0.05m, new LocalTime(20, 45)),
    ];

    /// <summary>The sittings of a full day.</summary>
    /// <param name="occasions">How many, 5 to 7.</param>
    /// <exception cref="ArgumentOutOfRangeException">Not 5, 6 or 7.</exception>
    public static ImmutableArray<Sitting> Of(int occasions) =>
        occasions switch
        {
            5 => Five,
            6 => Six,
            7 => Seven,
            _ => throw new ArgumentOutOfRangeException(
                nameof(occasions),
                occasions,
                "A loading day has 5 to 7 sittings."
            ),
        };

    /// <summary>
    /// The last sittings of the day that bring about a share of it: a part day starts late, it does not starve.
    /// </summary>
    /// <param name="day">Sittings of a full day.</param>
    /// <param name="share">Share wanted, above 0 to 1.</param>
    public static ImmutableArray<Sitting> Ending(ImmutableArray<Sitting> day, decimal share) =>
        Enumerable
            .Range(0, day.Length)
            .Select(skip => day[skip..])
            .MinBy(rest => Math.Abs(rest.Sum(s => s.Share) - share));
}
