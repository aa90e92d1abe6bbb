using NodaTime;
using Practice.Domain.Clients;
using Practice.Domain.Races;

namespace Practice.Domain.Debriefs;

/// <summary>What was learned from a race; there is one a race. It feeds the client's history and the next plan.</summary>
public sealed class Debrief
{
    private Debrief() { }

    /// <summary>The practice that owns the record.</summary>
    public Guid PracticeId { get; private set; }

    /// <summary>The race; also the key.</summary>
    public Guid RaceId { get; private set; }

    /// <summary>Who ran it.</summary>
    public Guid ClientId { get; private set; }

    /// <summary>How it went.</summary>
    public DebriefReport Report { get; private set; } = null!;

    /// <summary>Who wrote it down last.</summary>
    public string RecordedBy { get; private set; } = "";

    /// <summary>When.</summary>
    public Instant RecordedAt { get; private set; }

    /// <summary>Writes down how a race went.</summary>
    /// <exception cref="ArgumentException">The race has not started yet, or a figure is out of range.</exception>
    public static Debrief Of(Race race, DebriefReport report, string by, Instant now)
    {
        ArgumentNullException.ThrowIfNull(race);
        var debrief = new Debrief
        {
            PracticeId = race.PracticeId,
            RaceId = race.Id,
            ClientId = race.ClientId,
        };
        debrief.Correct(race, report, by, now);
        return debrief;
    }

    /// <summary>Corrects what was written down.</summary>
    /// <exception cref="ArgumentException">The race has not started yet, or a figure is out of range.</exception>
    public void Correct(Race race, DebriefReport report, string by, Instant now)
    {
        ArgumentNullException.ThrowIfNull(race);
        ArgumentNullException.ThrowIfNull(report);
        if (now < race.ZonedStart.ToInstant())
            throw new ArgumentException("A race is talked about after its start.", nameof(race));
        report.Check(race.DistanceKm);
        (Report, RecordedBy, RecordedAt) = (report, by, now);
    }

    /// <summary>
    /// What the race teaches of the runner's speed: its result, where it is a road race that was finished and no later
    /// one is known. Null where it teaches nothing.
    /// </summary>
    public Physique? Teaches(Race race, Physique physique)
    {
        ArgumentNullException.ThrowIfNull(race);
        ArgumentNullException.ThrowIfNull(physique);
        return
            Report is { End: RaceEnd.Finished, FinishTime: { } time }
            && race.Discipline == Discipline.RoadRunning
            && race.DistanceKm <= 250
            && !(physique.RecentResult?.On > race.Day)
            ? physique with
            {
                RecentResult = new RaceResult(race.DistanceKm, time, race.Day),
            }
            : null;
    }
}
