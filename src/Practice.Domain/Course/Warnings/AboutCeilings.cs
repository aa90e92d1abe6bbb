using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Quantities;

namespace Practice.Domain.Course;

/// <summary>Sugars of any hour and strength of any 40 minutes.</summary>
internal static class AboutCeilings
{
    private static readonly Duration Hour = Duration.FromHours(1);
    private static readonly Duration FortyMinutes = Duration.FromMinutes(40);

    public static IEnumerable<CourseWarning> Of(
        CourseCase course,
        CourseTargets targets,
        ImmutableArray<CourseStep> steps
    )
    {
        var hours = Rolling.Of(steps, Hour);
        if (
            Sugar(
                hours,
                t => t.GlucoseG,
                CourseRule.Glucose,
                "Glucose",
                targets.Glucose.High ?? 0,
                SugarCeiling.GlucoseBlocksAbove
            ) is
            { } glucose
        )
            yield return glucose;
        var fructoseBlocks = Math.Min(
            SugarCeiling.FructoseBlocksAbove,
            course.Adjustments.RaceFructoseMaxGPerHour ?? SugarCeiling.FructoseBlocksAbove
        );
        if (
            Sugar(
                hours,
                t => t.FructoseG,
                CourseRule.Fructose,
                "Fructose",
                targets.Fructose.High ?? 0,
                fructoseBlocks
            ) is
            { } fructose
        )
            yield return fructose;
        if (Mixed(course, CourseTotals.Of(steps)) is { } mixed)
            yield return mixed;
        if (Strength(steps) is { } strength)
            yield return strength;
    }

    private static CourseWarning? Sugar(
        ImmutableArray<Span> hours,
        Func<CourseTotals, decimal> sugar,
        CourseRule rule,
        string name,
        decimal warns,
        decimal blocks
    )
    {
        if (hours.MaxBy(h => sugar(h.Totals)) is not { } worst)
            return null;
        var most = sugar(worst.Totals);
        if (most <= warns)
            return null;
        var stops = most > blocks;
        return new CourseWarning(
            rule,
            stops ? WarningWeight.Stop : WarningWeight.Watch,
            $"{name} in the hour from {CourseClock.Words(worst.From)} is {Rounding.Shown(most, 0)} g; "
                + $"the ceiling is {Rounding.Shown(stops ? blocks : warns, 0)} g.",
            worst.From
        );
    }

    private static CourseWarning? Mixed(CourseCase course, CourseTotals total) =>
        FeedingRate.Of(course, total.CarbohydrateG) > SugarCeiling.MixedAbove
        && total.FructoseG < SugarCeiling.LeastFructoseToGlucose * total.GlucoseG
            ? new CourseWarning(
                CourseRule.Fructose,
                WarningWeight.Watch,
                "More than 60 g an hour with little fructose: take products of two parts to one."
            )
            : null;

    private static CourseWarning? Strength(ImmutableArray<CourseStep> steps)
    {
        var spans = Rolling
            .Of(steps, FortyMinutes)
            .Where(s => s.Totals.CarbohydrateG > 0)
            .Select(s => (s.From, Percent: Percent(s.Totals)))
            .ToList();
        if (spans.Count == 0)
            return null;
        var worst = spans.MaxBy(s => s.Percent ?? decimal.MaxValue);
        if (worst.Percent <= CourseTargets.StrengthWarns)
            return null;
        var over = spans.Count(s => (s.Percent ?? decimal.MaxValue) > CourseTargets.StrengthWarns);
        var strong = (worst.Percent ?? decimal.MaxValue) > CourseTargets.StrengthWarnsStrongly;
        var what = worst.Percent is { } percent
            ? $"is {Rounding.Shown(percent, 0)} %"
            : "is carbohydrate without any fluid";
        return new CourseWarning(
            CourseRule.DrinkStrength,
            strong ? WarningWeight.Watch : WarningWeight.Note,
            $"What is taken in the 40 min from {CourseClock.Words(worst.From)} {what}; "
                + $"above {(strong ? "14 % it is far too strong" : "10 % it is strong")}"
                + (over > 1 ? $" ({over} such spans)." : "."),
            worst.From
        );
    }

    private static decimal? Percent(CourseTotals totals) =>
        totals.FluidMl > 0 ? 100 * totals.CarbohydrateG / totals.FluidMl : null;
}
