using System.Collections.Immutable;
using NodaTime;

namespace Practice.Domain.Course;

/// <summary>
/// Reads a sheet as a plan: clock times, totals, hours, warnings. Pure and quick, so that every drag of a step is read
/// again; nothing that was decided is changed.
/// </summary>
public static class CourseReading
{
    /// <summary>The plan as the sheet stands.</summary>
    public static CoursePlan Of(CourseCase course)
    {
        ArgumentNullException.ThrowIfNull(course);
        var pace = course.Pace;
        var steps = InOrder(course.Sheet.Steps.Select(s => s with { Elapsed = pace.At(s.Km) }));
        var targets = CourseTargets.For(course);
        return new CoursePlan
        {
            Discipline = course.Discipline,
            Finish = course.Finish,
            Pacing = course.Choices.Pacing,
            Profile = course.Profile,
            Stations = course.Sheet.Stations,
            Products = EligibleProducts.For(course).Allowed,
            Splits = CourseSplits.Of(course),
            Steps = steps,
            Hours = Hours(steps, course.Finish),
            Total = CourseTotals.Of(steps),
            Targets = targets,
            Warnings = CourseWarnings.Of(course, targets, steps),
            Advice = CourseAdvice.Of(course, steps),
        };
    }

    /// <summary>Steps in order of the course; at one place food comes before drink.</summary>
    internal static ImmutableArray<CourseStep> InOrder(IEnumerable<CourseStep> steps) =>
        [.. steps.OrderBy(s => s.Km).ThenBy(s => s.Ml > 0).ThenBy(s => s.Id)];

    private static ImmutableArray<CourseHour> Hours(
        ImmutableArray<CourseStep> steps,
        Duration finish
    )
    {
        var hours = ImmutableArray.CreateBuilder<CourseHour>();
        for (var from = Duration.Zero; from < finish; from += Duration.FromHours(1))
        {
            var to = Duration.Min(from + Duration.FromHours(1), finish);
            // the finish itself belongs to the last hour
            var taken = steps.Where(s =>
                s.Elapsed >= from && (s.Elapsed < to || to == finish && s.Elapsed == to)
            );
            hours.Add(new CourseHour(hours.Count + 1, from, to, CourseTotals.Of(taken)));
        }
        return hours.ToImmutable();
    }
}
