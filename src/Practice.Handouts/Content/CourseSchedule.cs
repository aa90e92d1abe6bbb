using System.Collections.Immutable;
using Practice.Domain.Course;
using Practice.Domain.Plans;
using Practice.Domain.Quantities;
using Practice.Handouts.Blocks;

namespace Practice.Handouts.Content;

/// <summary>What to take at one place.</summary>
/// <param name="Km">Place.</param>
/// <param name="Clock">By the clock, if the start is on time.</param>
/// <param name="Elapsed">Since the start.</param>
/// <param name="Take">What, in household words.</param>
/// <param name="Where">Station or pocket.</param>
/// <param name="CarbohydrateG">What it brings, g.</param>
internal sealed record CourseStop(
    string Km,
    string Clock,
    string Elapsed,
    string Take,
    string Where,
    int CarbohydrateG
);

/// <summary>The course plan by place and by clock.</summary>
internal static class CourseSchedule
{
    /// <summary>The places at which something is taken, in order.</summary>
    public static ImmutableArray<CourseStop> Stops(RaceWeekPlan plan, Reader reader) =>
        [
            .. (plan.Course?.Steps ?? [])
                .GroupBy(s => s.Km)
                .OrderBy(g => g.Key)
                .Select(g => Stop([.. g], plan, reader)),
        ];

    /// <summary>The page of the course; nothing where there is no course plan.</summary>
    public static IEnumerable<Block> Blocks(RaceWeekPlan plan, Reader reader)
    {
        if (plan.Course is not { } course || Stops(plan, reader) is not { IsEmpty: false } stops)
            yield break;
        yield return new Heading(2, "On the course");
        yield return new Paragraph(
            $"For a finish in {CourseClock.Words(course.Finish)} h. The clock holds if the start is on time; the place counts if it is not.",
            IsQuiet: true
        );
        ImmutableArray<Column> columns = reader.IsNumberFree
            ? [new("Where and when", 1.5), new("Take", 2.6), new("From", 1.4)]
            :
            [
                new("Where and when", 1.5),
                new("Take", 2.6),
                new("From", 1.4),
                new("Carbs, g", 0.7, IsRight: true, IsFigure: true),
            ];
        yield return new Table(
            "What to take on the course: place, clock time, what to take and where it comes from.",
            columns,
            [.. stops.Select(s => Row(s, reader))],
            reader.IsNumberFree ? null : Total(course, stops)
        );
        if (!course.Carried.IsEmpty)
            yield return new Paragraph(
                $"To carry: {string.Join(", ", course.Carried.Select(c => $"{c.Count} × {c.Name}"))}."
            );
        if (!course.Advice.IsEmpty)
            yield return new Bullets([.. course.Advice.Select(Words.FromString)]);
    }

    private static RowGroup Row(CourseStop stop, Reader reader) =>
        new(
            new(stop.Km, stop.Clock, $"{stop.Elapsed} h into the race"),
            [
                reader.IsNumberFree
                    ? [stop.Take, stop.Where]
                    :
                    [
                        stop.Take,
                        stop.Where,
                        stop.CarbohydrateG.ToString(
                            System.Globalization.CultureInfo.InvariantCulture
                        ),
                    ],
            ]
        );

    private static Total Total(CoursePlan course, ImmutableArray<CourseStop> stops) =>
        new(
            "On the course",
            $"about {Rounding.Shown(course.CarbohydrateGPerHour, 0)}\u00A0g an hour",
            $"{stops.Sum(s => s.CarbohydrateG)}\u00A0g"
        );

    private static CourseStop Stop(
        ImmutableArray<CourseStep> steps,
        RaceWeekPlan plan,
        Reader reader
    )
    {
        var first = steps[0];
        return new(
            CourseClock.Place(first.Km),
            reader.Dates.Time(CourseClock.At(plan.Header.RaceStart, first.Elapsed)),
            CourseClock.Words(first.Elapsed),
            string.Join(", ", steps.Select(s => s.Words)),
            string.Join(" and ", steps.Select(StepSource.Words).Distinct()),
            Apportion.Whole(steps.Sum(s => s.CarbohydrateG))
        );
    }
}
