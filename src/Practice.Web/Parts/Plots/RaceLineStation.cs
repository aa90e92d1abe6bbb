using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Races;

namespace Practice.Web.Parts.Plots;

/// <summary>What a place on the race line is.</summary>
public enum RaceLinePlace
{
    Today,
    Rehearsal,
    LowResidue,
    Loading,
    RaceMorning,
    Start,
    Finish,
}

/// <summary>A place on the race line: a moment, or a stretch with an end.</summary>
/// <param name="Place">What it is.</param>
/// <param name="Name">In the trade's words.</param>
/// <param name="When">In words a person reads.</param>
/// <param name="From">When it is or begins.</param>
/// <param name="To">When it ends; null for a moment.</param>
public sealed record RaceLineStation(
    RaceLinePlace Place,
    string Name,
    string When,
    LocalDateTime From,
    LocalDateTime? To = null
)
{
    /// <summary>Whether it lies behind.</summary>
    public bool IsOver(LocalDateTime now) => (To ?? From) < now;

    /// <summary>The stations of a race, in order of time.</summary>
    /// <param name="now">Now, in the race's clock.</param>
    /// <param name="calendar">The race's days.</param>
    /// <param name="loadingFrom">First loading meal, or where the window begins.</param>
    /// <param name="expected">Expected time on the course.</param>
    public static ImmutableArray<RaceLineStation> Of(
        LocalDateTime now,
        RaceCalendar calendar,
        LocalDateTime loadingFrom,
        Duration expected
    )
    {
        var start = calendar.Start;
        var finish = start.PlusSeconds((long)expected.TotalSeconds);
        return
        [
            new(RaceLinePlace.Today, "Today", Say.ShortDay(now.Date), now),
            new(
                RaceLinePlace.Rehearsal,
                "Rehearsal weeks",
                $"{Say.ShortDay(calendar.RehearseFrom)} to {Say.ShortDay(calendar.RehearseTo)}",
                calendar.RehearseFrom.AtMidnight(),
                calendar.RehearseTo.PlusDays(1).AtMidnight()
            ),
            new(
                RaceLinePlace.LowResidue,
                "Low-residue shift",
                $"from {Say.ShortDay(calendar.LowResidueFrom)}",
                calendar.LowResidueFrom.AtMidnight(),
                start
            ),
            new(
                RaceLinePlace.Loading,
                "Loading window",
                $"from {Say.Moment(loadingFrom)}",
                loadingFrom,
                calendar.RaceMorningFrom
            ),
            new(
                RaceLinePlace.RaceMorning,
                "Race morning",
                $"from {Say.Time(calendar.RaceMorningFrom.TimeOfDay)}",
                calendar.RaceMorningFrom,
                start
            ),
            new(RaceLinePlace.Start, "Start", Say.Moment(start), start),
            new(RaceLinePlace.Finish, "Finish", $"about {Say.Time(finish.TimeOfDay)}", finish),
        ];
    }
}
