using System.Collections.Immutable;
using Practice.Domain.Quantities;

namespace Practice.Domain.Course;

/// <summary>Carbohydrate and sodium of the whole race against their targets, and when caffeine comes.</summary>
internal static class AboutAmounts
{
    private const decimal EnoughShare = 0.9m;

    public static IEnumerable<CourseWarning> Of(
        CourseCase course,
        CourseTargets targets,
        ImmutableArray<CourseStep> steps
    )
    {
        if (steps.IsEmpty)
            yield break;
        var total = CourseTotals.Of(steps);
        var rate = FeedingRate.Of(course, total.CarbohydrateG);
        if (targets.Carbohydrate.High is { } most && rate > most)
            yield return new(
                CourseRule.Carbohydrate,
                WarningWeight.Watch,
                $"{Rounding.Shown(rate, 0)} g of carbohydrate an hour are more than the {Rounding.Shown(most, 0)} g allowed."
            );
        else if (targets.Carbohydrate.Aim is { } aim && rate < EnoughShare * aim)
            yield return new(
                CourseRule.Carbohydrate,
                WarningWeight.Watch,
                $"{Rounding.Shown(rate, 0)} g of carbohydrate an hour are less than the {Rounding.Shown(aim, 0)} g aimed at."
            );
        if (Sodium(targets, total) is { } sodium)
            yield return sodium;
        foreach (var step in steps.Where(s => s.CaffeineMg > 0))
            if (step.Elapsed.TotalHours < 1)
                yield return new(
                    CourseRule.Caffeine,
                    WarningWeight.Note,
                    $"Caffeine at {CourseClock.Words(step.Elapsed)}: it is usually taken late, at 60 to 70 % of the race.",
                    step.Elapsed
                );
    }

    private static CourseWarning? Sodium(CourseTargets targets, CourseTotals total)
    {
        if (targets.Sodium is not { Low: { } low, High: { } high } || total.FluidMl == 0)
            return null;
        var perLitre = 1000 * total.SodiumMg / total.FluidMl;
        var words = $"{Rounding.Shown(perLitre, 0)} mg of sodium for each litre drunk";
        return perLitre < low
                ? new(
                    CourseRule.Sodium,
                    WarningWeight.Note,
                    $"{words}: below the usual {low:0} to {high:0} mg."
                )
            : perLitre > high
                ? new(
                    CourseRule.Sodium,
                    WarningWeight.Note,
                    $"{words}: above the usual {low:0} to {high:0} mg."
                )
            : null;
    }
}
