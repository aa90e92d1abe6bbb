using NodaTime;
using Practice.Domain.Races;

namespace Practice.Domain.Debriefs;

/// <summary>How a race ended.</summary>
public enum RaceEnd
{
    /// <summary>Finished.</summary>
    Finished,

    /// <summary>Started and did not finish.</summary>
    Stopped,

    /// <summary>Did not start.</summary>
    NotStarted,
}

/// <summary>How much of a plan was taken.</summary>
public enum TakenShare
{
    /// <summary>As planned.</summary>
    AsPlanned,

    /// <summary>Most of it.</summary>
    Most,

    /// <summary>About half.</summary>
    Half,

    /// <summary>Little or nothing.</summary>
    Little,
}

/// <summary>Whether the legs ran out of fuel.</summary>
public enum WallFelt
{
    /// <summary>No.</summary>
    No,

    /// <summary>Slowed late on, as most do.</summary>
    Slowed,

    /// <summary>Hit the wall.</summary>
    Wall,
}

/// <summary>How a race went, as the client told it.</summary>
public sealed record DebriefReport
{
    /// <summary>How it ended.</summary>
    public RaceEnd End { get; init; }

    /// <summary>Finish time; null without one.</summary>
    public Duration? FinishTime { get; init; }

    /// <summary>What was eaten of the loading days.</summary>
    public TakenShare LoadingEaten { get; init; }

    /// <summary>What was taken of the course plan.</summary>
    public TakenShare CourseTaken { get; init; }

    /// <summary>Carbohydrate taken on the course, g/h, 0 to 150; null when nobody counted.</summary>
    public decimal? TakenGPerHour { get; init; }

    /// <summary>Worst gut symptom in the race, 0 to 10; null when nobody asked.</summary>
    public int? WorstGut { get; init; }

    /// <summary>Symptoms in words.</summary>
    public string Symptoms { get; init; } = "";

    /// <summary>Whether the legs ran out of fuel.</summary>
    public WallFelt Wall { get; init; }

    /// <summary>Where, km from the start; null when it did not happen.</summary>
    public decimal? WallKm { get; init; }

    /// <summary>The weather there was; null when not known.</summary>
    public ExpectedWeather? Weather { get; init; }

    /// <summary>What to keep and what to change next time, in the practitioner's words.</summary>
    public string NextTime { get; init; } = "";

    /// <exception cref="ArgumentException">A figure is out of range, or a finish has no time.</exception>
    internal void Check(decimal distanceKm)
    {
        if (End == RaceEnd.Finished && FinishTime is null)
            throw new ArgumentException("A finish has a time.");
        if (FinishTime is { } time && (time <= Duration.Zero || time > Duration.FromDays(7)))
            throw new ArgumentException("A finish time is above zero and at most seven days.");
        if (WorstGut is < 0 or > 10)
            throw new ArgumentException("A symptom is scored from 0 to 10.");
        if (TakenGPerHour is < 0 or > 150)
            throw new ArgumentException("Carbohydrate on the course is 0 to 150 g/h.");
        if (WallKm is { } km && (km < 0 || km > distanceKm))
            throw new ArgumentException("The wall stands on the course.");
    }
}
