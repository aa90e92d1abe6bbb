using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Foods;
using Practice.Domain.Plans;

namespace Practice.Domain.Rehearsals;

/// <summary>
/// Which part of a plan version a rehearsal takes: from one of its days to another, counted back from the race as the
/// plan counts them. The plan's eve (1) is eaten on the day before the long run.
/// </summary>
/// <param name="PlanVersionId">The plan version.</param>
/// <param name="FirstDay">Days before the race of the first day taken, 1 to 14.</param>
/// <param name="LastDay">Days before the race of the last day taken, 1 to <paramref name="FirstDay"/>.</param>
/// <param name="From">Where the first day begins; null for the whole of it.</param>
public sealed record RehearsedPart(
    Guid PlanVersionId,
    int FirstDay,
    int LastDay = 1,
    OccasionKind? From = null
)
{
    /// <summary>Whether its days can be taken.</summary>
    public bool IsValid => LastDay >= 1 && FirstDay >= LastDay && FirstDay <= 14;

    /// <summary>The first day on which food of the plan is eaten.</summary>
    /// <param name="runOn">Day of the run.</param>
    public LocalDate FirstEatenOn(LocalDate runOn) => runOn.PlusDays(LastDay - 1 - FirstDay);

    /// <summary>The sittings to eat, in order, moved to the rehearsal's days and cut to the dose.</summary>
    /// <param name="plan">The plan of the version.</param>
    /// <param name="runOn">Day of the run.</param>
    /// <param name="dose">
    /// Fraction of the planned amounts, above 0 to 1. A portion is cut to the nearest amount that a person would serve,
    /// so that the sum may be a little off; the aim is cut exactly.
    /// </param>
    public ImmutableArray<RehearsedSitting> Sittings(
        RaceWeekPlan plan,
        LocalDate runOn,
        decimal dose
    )
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(dose);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(dose, 1);
        return
        [
            .. plan
                .Days.Where(day => day.DaysBefore <= FirstDay && day.DaysBefore >= LastDay)
                .OrderByDescending(day => day.DaysBefore)
                .SelectMany(day =>
                    day.Occasions.Where(o =>
                            day.DaysBefore < FirstDay || From is not { } from || o.Kind >= from
                        )
                        .OrderBy(o => o.Kind)
                        .Select(o => new RehearsedSitting(
                            runOn.PlusDays(LastDay - 1 - day.DaysBefore),
                            o.Kind,
                            o.Time,
                            o.CarbohydrateAimG * dose,
                            [.. o.Portions.Select(p => Cut(p, dose))]
                        ))
                ),
        ];
    }

    private static Portion Cut(Portion portion, decimal dose) =>
        dose == 1
            ? portion
            : portion with
            {
                Steps = portion.Serving.Steps.MinBy(s => Math.Abs(s - portion.Steps * dose)),
            };
}

/// <summary>A sitting of the plan as the rehearsal asks for it.</summary>
/// <param name="Date">Day on which it is eaten.</param>
/// <param name="Kind">Which sitting.</param>
/// <param name="Time">When.</param>
/// <param name="CarbohydrateAimG">Carbohydrate aimed at, g.</param>
/// <param name="Portions">What is on the plate.</param>
public sealed record RehearsedSitting(
    LocalDate Date,
    OccasionKind Kind,
    LocalTime Time,
    decimal CarbohydrateAimG,
    ImmutableArray<Portion> Portions
);
