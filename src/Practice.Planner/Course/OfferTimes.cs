using Practice.Domain.Course;
using Practice.Domain.Races;

namespace Practice.Planner.Course;

/// <summary>From when to when in a race each kind of thing is taken, min since the start.</summary>
internal sealed record OfferTimes
{
    private const double DrinkAfterMinutes = 10;
    private const double WaterBeforeFinish = 5;
    private const double CaffeineAfterMinutes = 60;
    private const double CaffeineAfterShare = 0.45;

    public required double FirstDrink { get; init; }
    public required double FirstSweetDrink { get; init; }
    public required double FirstFeed { get; init; }
    public required double LastFeed { get; init; }
    public required double LastWater { get; init; }
    public required double FirstCaffeine { get; init; }
    public required decimal CaffeineAtOnceMg { get; init; }

    public static OfferTimes Of(CourseCase course, PaceLine pace)
    {
        var finish = course.Finish.TotalMinutes;
        // nothing is taken in the swim of a triathlon
        var begin = course is { Discipline: Discipline.Triathlon, Choices.Legs: { } legs }
            ? legs.Swim.TotalMinutes
            : 0;
        var settled = pace.At(FeedTimes.FirstKm).TotalMinutes;
        return new OfferTimes
        {
            FirstDrink = begin + DrinkAfterMinutes,
            FirstSweetDrink = Math.Max(begin + DrinkAfterMinutes, settled),
            FirstFeed = Math.Max(begin + FeedTimes.Interval.TotalMinutes, settled),
            LastFeed = finish - FeedTimes.LastBeforeFinish.TotalMinutes,
            LastWater = finish - WaterBeforeFinish,
            FirstCaffeine = Math.Max(CaffeineAfterMinutes, CaffeineAfterShare * finish),
            CaffeineAtOnceMg = CaffeineRules.AtOnceMg(course),
        };
    }
}
