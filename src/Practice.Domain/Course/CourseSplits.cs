using System.Collections.Immutable;

namespace Practice.Domain.Course;

/// <summary>Passing times by both ways of pacing.</summary>
internal static class CourseSplits
{
    public static ImmutableArray<CourseSplit> Of(CourseCase course)
    {
        var pace = PaceLine.Of(course, Pacing.EvenPace);
        var effort = PaceLine.Of(course, Pacing.EvenEffort);
        var length = course.Profile.DistanceKm;
        var every = length > 100 ? 5 : 1;
        var splits = ImmutableArray.CreateBuilder<CourseSplit>();
        for (decimal km = every; km < length; km += every)
            splits.Add(new CourseSplit(km, pace.At(km), effort.At(km)));
        splits.Add(new CourseSplit(length, pace.At(length), effort.At(length)));
        return splits.ToImmutable();
    }
}
