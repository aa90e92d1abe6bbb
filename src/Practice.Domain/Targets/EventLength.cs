using Practice.Domain.Races;

namespace Practice.Domain.Targets;

/// <summary>Whether an event is long enough to load for: 90 min or more of sustained effort (Thomas 2016).</summary>
internal static class EventLength
{
    public const decimal ShortestToLoadForMinutes = 90;

    public static bool IsWorthLoading(Race race, Target expectedFinish) =>
        (expectedFinish.Aim ?? AssumedMinutes(race)) >= ShortestToLoadForMinutes;

    /// <summary>Own rule for want of anything better: a usual speed of the discipline.</summary>
    private static decimal AssumedMinutes(Race race) =>
        60 * race.DistanceKm / AssumedKmPerHour(race.Discipline);

    private static decimal AssumedKmPerHour(Discipline discipline) =>
        discipline switch
        {
            Discipline.RoadRunning => 10,
            Discipline.TrailRunning => 7,
            Discipline.Cycling => 28,
            Discipline.Triathlon => 15,
            _ => 5,
        };
}
