using System.Collections.Immutable;

namespace Practice.Domain.Course;

/// <summary>What speaks against the steps as they stand: each rule reads them for itself.</summary>
internal static class CourseWarnings
{
    public static ImmutableArray<CourseWarning> Of(
        CourseCase course,
        CourseTargets targets,
        ImmutableArray<CourseStep> steps
    ) =>
        [
            .. AboutTheDay
                .Of(course)
                .Concat(AboutSafety.Of(course, steps))
                .Concat(AboutCeilings.Of(course, targets, steps))
                .Concat(AboutFluid.Of(course, targets, steps))
                .Concat(AboutAmounts.Of(course, targets, steps))
                .Concat(AboutPlaces.Of(course, steps))
                .OrderByDescending(w => w.Weight),
        ];
}
