using System.Collections.Immutable;
using NodaTime;

namespace Practice.Domain.Course;

/// <summary>
/// When to feed: every 20 min from minute 20, the last at least 15 min before the finish. A rule of thumb to compare
/// with; the planner fits feeds to stations and products. Own rule. Checks K09 to K11.
/// </summary>
public static class FeedTimes
{
    /// <summary>First feed and distance between feeds.</summary>
    public static Duration Interval { get; } = Duration.FromMinutes(20);

    /// <summary>No feed later than this before the finish.</summary>
    public static Duration LastBeforeFinish { get; } = Duration.FromMinutes(15);

    /// <summary>No longer without carbohydrate, where it can be had.</summary>
    public static Duration LongestGap { get; } = Duration.FromMinutes(30);

    /// <summary>No feed before this place, km.</summary>
    public const decimal FirstKm = 3;

    /// <summary>Times since the start; none in a race too short for one.</summary>
    /// <param name="finish">Planned time.</param>
    public static ImmutableArray<Duration> For(Duration finish)
    {
        var times = ImmutableArray.CreateBuilder<Duration>();
        for (var at = Interval; at <= finish - LastBeforeFinish; at += Interval)
            times.Add(at);
        return times.ToImmutable();
    }
}
