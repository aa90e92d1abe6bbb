using Practice.Domain.Caseload;
using Practice.Domain.Rehearsals;
using Practice.Service.Audit;
using Practice.Service.Desks;
using Practice.Store.Rehearsals;

namespace Practice.Service.Rehearsals;

/// <summary>Records what a client told by other ways than the phone page: on the telephone, on a filled-in sheet.</summary>
public sealed class RecordFeedback(RehearsalStore rehearsals, PracticeCalendar calendar)
{
    /// <param name="desk">Who acts.</param>
    /// <param name="rehearsal">The rehearsal as it was read; what the client sent meanwhile is not overwritten.</param>
    /// <param name="feedback">What was told.</param>
    /// <param name="cancel">Cancels.</param>
    /// <exception cref="ArgumentException">A number is out of its range.</exception>
    /// <exception cref="InvalidOperationException">It is reviewed or cancelled.</exception>
    public Task<SaveOutcome<Rehearsal>> Run(
        Desk desk,
        OnFile<Rehearsal> rehearsal,
        Feedback feedback,
        CancellationToken cancel
    )
    {
        var before = ToldFacts.Of(rehearsal.Value.Feedback);
        rehearsal.Value.Tell(feedback with { ReceivedAt = calendar.Now });
        var note = desk.Note("feedback-recorded", rehearsal.Value.Id, calendar.Now)
            .With(rehearsal.Value.ClientId, before, ToldFacts.Of(feedback));
        return rehearsals.Save(rehearsal, note, cancel);
    }
}
