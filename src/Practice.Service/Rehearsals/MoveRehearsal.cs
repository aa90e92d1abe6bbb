using NodaTime;
using Practice.Domain.Caseload;
using Practice.Domain.Rehearsals;
using Practice.Service.Desks;
using Practice.Store.Plans;
using Practice.Store.Races;
using Practice.Store.Rehearsals;

namespace Practice.Service.Rehearsals;

/// <summary>Moves a booked rehearsal to another day, or changes what it tries.</summary>
public sealed class MoveRehearsal(
    RaceStore races,
    PlanStore plans,
    RehearsalStore rehearsals,
    RehearsalCalendars calendars,
    PracticeCalendar calendar
)
{
    /// <summary>Moves it to another day of the run.</summary>
    public async Task<BookOutcome> Run(
        Desk desk,
        Guid rehearsalId,
        LocalDate runOn,
        CancellationToken cancel
    ) =>
        await rehearsals.Find(desk.PracticeId, rehearsalId, cancel) is { } onFile
            ? await Run(desk, onFile, onFile.Value.Details with { RunOn = runOn }, cancel)
            : new BookedElsewhere();

    /// <summary>Changes what is tried, and when.</summary>
    /// <param name="desk">Who acts.</param>
    /// <param name="rehearsal">The rehearsal as it was read.</param>
    /// <param name="details">What the form says.</param>
    /// <param name="cancel">Cancels.</param>
    public async Task<BookOutcome> Run(
        Desk desk,
        OnFile<Rehearsal> rehearsal,
        RehearsalDetails details,
        CancellationToken cancel
    )
    {
        var (id, was) = (rehearsal.Value.Id, rehearsal.Value.Details);
        if (
            rehearsal.Value.Status != RehearsalStatus.Booked
            || await races.Find(desk.PracticeId, rehearsal.Value.RaceId, cancel)
                is not { Value: var race }
            || await plans.Find(desk.PracticeId, details.Part.PlanVersionId, cancel)
                is not { Value: var version }
        )
            return new BookedElsewhere();
        var notes = (await calendars.Without(desk, race, id, cancel)).Judge(
            RehearsalCalendars.Place(details)
        );
        if (notes.Any(n => n.Blocks))
            return new NoPlaceThere(notes);
        try
        {
            var isNewPlan = details.Part.PlanVersionId != was.Part.PlanVersionId;
            rehearsal.Value.Change(details, isNewPlan ? version.Plan : null);
        }
        catch (ArgumentException e)
        {
            return new NothingToRehearse(e.Message);
        }
        var what = details.RunOn == was.RunOn ? "rehearsal-changed" : "rehearsal-moved";
        return
            await rehearsals.Save(rehearsal, desk.Note(what, id, calendar.Now), cancel)
            is Saved<Rehearsal>
            ? new Booked(id, notes)
            : new BookedElsewhere();
    }
}
