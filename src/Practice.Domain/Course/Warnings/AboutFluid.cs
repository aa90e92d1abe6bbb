using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Quantities;

namespace Practice.Domain.Course;

/// <summary>Never more in than is sweated; not far below either, where the client may plan to drink.</summary>
internal static class AboutFluid
{
    public static IEnumerable<CourseWarning> Of(
        CourseCase course,
        CourseTargets targets,
        ImmutableArray<CourseStep> steps
    )
    {
        var total = CourseTotals.Of(steps);
        if (MassBalance(course, total) is { } balance)
            yield return balance;
        if (FullestHour(course, targets, steps) is { } hour)
            yield return hour;
        if (
            targets.Fluid.Low is { } low
            && steps.Length > 0
            && total.FluidMl / 1000 < low * course.Hours
        )
            yield return new(
                CourseRule.Fluid,
                WarningWeight.Watch,
                $"{Litres(total.FluidMl / 1000)} in all are less than the {Litres(low * course.Hours)} "
                    + "that keep the loss below 2 % of body mass."
            );
    }

    private static CourseWarning? MassBalance(CourseCase course, CourseTotals total)
    {
        if (CourseFluidTarget.SweatedL(course) is not { } sweated)
            return null;
        var taken = (total.FluidMl + total.FoodG) / 1000;
        return taken > sweated
            ? new CourseWarning(
                CourseRule.Fluid,
                WarningWeight.Stop,
                $"The plan gains mass: {Litres(taken)} in against {Litres(sweated)} sweated. Nobody is advised to drink more than is lost."
            )
            : null;
    }

    private static CourseWarning? FullestHour(
        CourseCase course,
        CourseTargets targets,
        ImmutableArray<CourseStep> steps
    )
    {
        var worst = Rolling.Of(steps, Duration.FromHours(1)).MaxBy(h => h.Totals.FluidMl);
        if (worst is null || targets.Fluid.High is not { } high)
            return null;
        var litres = worst.Totals.FluidMl / 1000;
        if (litres <= high)
            return null;
        var aboveSweat = litres > course.Choices.SweatLPerHour;
        return new CourseWarning(
            CourseRule.Fluid,
            aboveSweat ? WarningWeight.Stop : WarningWeight.Watch,
            $"Drinking in the hour from {CourseClock.Words(worst.From)} is {Litres(litres)}; the ceiling is {Litres(high)}.",
            worst.From
        );
    }

    private static string Litres(decimal litres) => $"{Rounding.Shown(litres, 2)} L";
}
