using Practice.Domain.Evidence;
using Practice.Domain.Physiology;
using Practice.Domain.Plans;

namespace Practice.Domain.Rehearsals;

/// <summary>
/// What a rehearsal takes unless somebody chooses otherwise: a full one the last two days of the plan whole, with race
/// breakfast and fuelling; a partial one the eve alone, at about 7.5 g/kg.
/// </summary>
public static class UsualRehearsal
{
    // a first step is 7 to 8 g/kg
    private const decimal PartialGPerKg = 7.5m;
    private const decimal BreakfastHours = 3;

    /// <summary>Where it comes from.</summary>
    public static Source Source => Sources.RehearsalHabit;

    /// <summary>The details of a rehearsal on a place of the calendar.</summary>
    /// <param name="place">Kind and day.</param>
    /// <param name="versionId">The plan version.</param>
    /// <param name="plan">Its plan.</param>
    public static RehearsalDetails Of(RehearsalPlace place, Guid versionId, RaceWeekPlan plan)
    {
        ArgumentNullException.ThrowIfNull(place);
        ArgumentNullException.ThrowIfNull(plan);
        var first = Math.Clamp(place.EatingDays, 1, Math.Max(1, plan.Days.Length));
        return new()
        {
            RunOn = place.RunOn,
            Kind = place.Kind,
            Part = new RehearsedPart(versionId, first),
            Dose = place.Kind == RehearsalKind.Full ? 1 : PartialDose(plan),
            Breakfast = new BreakfastTrial(
                BreakfastHours,
                Math.Round(
                    PreRaceMeal.CarbohydrateG(plan.Header.BodyMass.Kilograms, BreakfastHours)
                ),
                ""
            ),
            RunFuel =
                place.Kind == RehearsalKind.Full
                && plan.Course?.Targets.Carbohydrate.Aim is { } rate and <= 120
                    ? new RunFuelTrial(rate, null, "")
                    : null,
        };
    }

    private static decimal PartialDose(RaceWeekPlan plan) =>
        plan.Targets.CarbohydrateRate.Aim is { } rate and > PartialGPerKg
            ? Math.Round(PartialGPerKg / rate, 2)
            : 1;
}
