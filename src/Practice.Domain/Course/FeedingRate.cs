using Practice.Domain.Races;

namespace Practice.Domain.Course;

/// <summary>
/// Carbohydrate over the time in which feeding goes on: the race less half an interval at its begin and the last
/// quarter of an hour, and without the swim of a triathlon. Own rule: a rate over the whole race would ask for more in
/// the hours between than the gut is meant to get.
/// </summary>
public static class FeedingRate
{
    /// <summary>The rate, g/h; 0 where there is no time to feed.</summary>
    public static decimal Of(CourseCase course, decimal carbohydrateG)
    {
        var hours = HoursOf(course);
        return hours > 0 ? carbohydrateG / hours : 0;
    }

    /// <summary>Hours in which feeding goes on.</summary>
    public static decimal HoursOf(CourseCase course)
    {
        ArgumentNullException.ThrowIfNull(course);
        var swim = course is { Discipline: Discipline.Triathlon, Choices.Legs: { } legs }
            ? legs.Swim.TotalHours
            : 0;
        var hours =
            course.Finish.TotalHours
            - swim
            - FeedTimes.Interval.TotalHours / 2
            - FeedTimes.LastBeforeFinish.TotalHours;
        return (decimal)Math.Max(0, hours);
    }
}
