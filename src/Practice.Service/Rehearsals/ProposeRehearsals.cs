using System.Collections.Immutable;
using Practice.Domain.Plans;
using Practice.Domain.Rehearsals;
using Practice.Service.Desks;
using Practice.Service.Foods;
using Practice.Store.Plans;
using Practice.Store.Races;
using Practice.Store.Rehearsals;

namespace Practice.Service.Rehearsals;

/// <summary>Opens the rehearsals of a race and proposes what is still to be booked.</summary>
public sealed class ProposeRehearsals(
    RaceStore races,
    PlanStore plans,
    RehearsalStore rehearsals,
    RehearsalCalendars calendars,
    Larder larder
)
{
    /// <returns>The rehearsals; null when the practice has no such race.</returns>
    public async Task<RaceRehearsals?> Run(Desk desk, Guid raceId, CancellationToken cancel)
    {
        if (await races.Find(desk.PracticeId, raceId, cancel) is not { Value: var race })
            return null;
        var background = await calendars.Background(desk, race.ClientId, cancel);
        var all = (await rehearsals.OfRace(desk.PracticeId, raceId, cancel))
            .Where(r => r.Status != RehearsalStatus.Cancelled)
            .ToImmutableArray();
        var calendar = calendars.Of(race, background, all);
        return new RaceRehearsals(
            race,
            [.. all.Select(r => Placed(r, calendars.Of(race, background, all.Where(o => o != r))))],
            background,
            calendar,
            Propose(calendar, all),
            await Version(desk, raceId, cancel),
            await larder.Run(desk, cancel)
        );
    }

    private static PlacedRehearsal Placed(Rehearsal rehearsal, RehearsalCalendar others) =>
        new(
            rehearsal,
            rehearsal.Status == RehearsalStatus.Booked
                ? others.JudgeBooked(RehearsalCalendars.Place(rehearsal.Details))
                : []
        );

    // a full rehearsal that failed or asked for a change is run once more, a week later at the earliest
    private static RehearsalProposal Propose(
        RehearsalCalendar calendar,
        ImmutableArray<Rehearsal> all
    )
    {
        if (
            all.LastOrDefault()
            is not {
                Details.Kind: RehearsalKind.Full,
                Decision.Verdict: not TrialVerdict.Pass and var verdict
            } last
        )
            return calendar.Propose();
        var how = verdict == TrialVerdict.Fail ? "failed" : "asked for a change";
        return
            calendar.Next(RehearsalKind.Full, last.RunOn.PlusDays(RehearsalCalendar.Apart))
                is { } again
            ? new([again], $"The last full rehearsal {how}: repeat it with the changed plan.")
            : new([], $"The last full rehearsal {how}, and no time is left to repeat it.");
    }

    private async Task<PlanVersion?> Version(Desk desk, Guid raceId, CancellationToken cancel) =>
        await plans.Latest(desk.PracticeId, raceId, cancel)
            is { Value: { Status: not PlanStatus.Withdrawn } version }
            ? version
            : null;
}
