using System.Collections.Immutable;
using Practice.Domain.Plans;
using Practice.Domain.Rehearsals;
using Practice.Domain.Screening;
using Practice.Service.Desks;
using Practice.Service.Races;
using Practice.Store.Plans;
using Practice.Store.Rehearsals;

namespace Practice.Service.Rehearsals;

/// <summary>What became of booking or moving a rehearsal.</summary>
public abstract record BookOutcome;

/// <summary>It stands in the calendar.</summary>
/// <param name="RehearsalId">Key of the rehearsal.</param>
/// <param name="Warnings">What speaks against its place.</param>
public sealed record Booked(Guid RehearsalId, ImmutableArray<PlacementNote> Warnings) : BookOutcome;

/// <summary>Nothing may be rehearsed on that day: nothing was booked.</summary>
/// <param name="Why">What blocks it.</param>
public sealed record NoPlaceThere(ImmutableArray<PlacementNote> Why) : BookOutcome;

/// <summary>A warning sign stands: nothing is rehearsed before a doctor has said so.</summary>
/// <param name="Hold">The hold.</param>
public sealed record RehearsingHeld(Hold Hold) : BookOutcome;

/// <summary>There is no plan to rehearse, or the numbers make no sense.</summary>
/// <param name="Why">What is wrong.</param>
public sealed record NothingToRehearse(string Why) : BookOutcome;

/// <summary>It took place, was cancelled, or somebody changed it meanwhile.</summary>
public sealed record BookedElsewhere : BookOutcome;

/// <summary>Books a rehearsal.</summary>
public sealed class BookRehearsal(
    RaceCases cases,
    PlanStore plans,
    RehearsalStore rehearsals,
    RehearsalCalendars calendars,
    PracticeCalendar calendar
)
{
    /// <summary>Books the usual rehearsal on a place of the calendar.</summary>
    public async Task<BookOutcome> Run(
        Desk desk,
        Guid raceId,
        RehearsalPlace place,
        CancellationToken cancel
    ) =>
        await plans.Latest(desk.PracticeId, raceId, cancel)
            is { Value: { Status: not PlanStatus.Withdrawn } version }
            ? await Run(desk, raceId, UsualRehearsal.Of(place, version.Id, version.Plan), cancel)
            : new NothingToRehearse("Build a plan first: a rehearsal takes a part of it.");

    /// <summary>Books a rehearsal as a person set it up.</summary>
    public async Task<BookOutcome> Run(
        Desk desk,
        Guid raceId,
        RehearsalDetails details,
        CancellationToken cancel
    )
    {
        if (
            await cases.Open(desk, raceId, cancel) is not { } raceCase
            || await plans.Find(desk.PracticeId, details.Part.PlanVersionId, cancel)
                is not { Value: var version }
        )
            return new NothingToRehearse("There is no such race or plan.");
        if (raceCase.StandingHolds.FirstOrDefault(h => h.Key == WarningSigns.HoldKey) is { } hold)
            return new RehearsingHeld(hold);
        var others = await calendars.Without(desk, raceCase.Race.Value, null, cancel);
        var notes = others.Judge(RehearsalCalendars.Place(details));
        if (notes.Any(n => n.Blocks))
            return new NoPlaceThere(notes);
        try
        {
            var rehearsal = Rehearsal.Book(
                desk.PracticeId,
                raceCase.Client.Id,
                raceId,
                details,
                version.Plan
            );
            await rehearsals.Add(
                rehearsal,
                desk.Note("rehearsal-booked", rehearsal.Id, calendar.Now),
                cancel
            );
            return new Booked(rehearsal.Id, notes);
        }
        catch (ArgumentException e)
        {
            return new NothingToRehearse(e.Message);
        }
    }
}
