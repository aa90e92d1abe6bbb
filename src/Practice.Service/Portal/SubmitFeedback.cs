using Practice.Domain.Rehearsals;
using Practice.Service.Audit;
using Practice.Service.Desks;
using Practice.Service.Mail;
using Practice.Store.Portal;

namespace Practice.Service.Portal;

/// <summary>What became of an entry.</summary>
public abstract record SubmitOutcome;

/// <summary>It is on file, once, whether by this sending or by an earlier one of the same entry.</summary>
public sealed record FeedbackReceived : SubmitOutcome;

/// <summary>The practitioner has read and decided: nothing was changed.</summary>
public sealed record ReviewedAlready : SubmitOutcome;

/// <summary>A number is out of its range: nothing was changed.</summary>
public sealed record ImplausibleFeedback : SubmitOutcome;

/// <summary>The link opens nothing, or no such rehearsal.</summary>
public sealed record NothingToTell : SubmitOutcome;

/// <summary>
/// Takes in what a client tells of a rehearsal. May be told again, and otherwise, until it is reviewed; the line of
/// audit is what announces it to the practitioner's screens.
/// </summary>
public sealed class SubmitFeedback(
    LinkDoor door,
    FeedbackStore received,
    SendThanks thanks,
    PracticeCalendar calendar
)
{
    /// <param name="secret">The link's secret.</param>
    /// <param name="rehearsalId">The rehearsal told of.</param>
    /// <param name="key">The name the phone gave this entry: sent again under it, nothing changes.</param>
    /// <param name="feedback">What is told; when it came in is set here.</param>
    /// <param name="cancel">Cancels.</param>
    public async Task<SubmitOutcome> Run(
        string secret,
        Guid rehearsalId,
        Guid key,
        Feedback feedback,
        CancellationToken cancel
    )
    {
        if (await door.Open(secret, cancel) is not { } link)
            return new NothingToTell();
        if (!feedback.IsPlausible)
            return new ImplausibleFeedback();
        // somebody may change the rehearsal between reading and saving: then it is read again
        while (await door.Rehearsal(link, rehearsalId, cancel) is { } rehearsal)
        {
            if (await received.Has(link.PracticeId, rehearsalId, key, cancel))
                return new FeedbackReceived();
            if (rehearsal.Value.Status == RehearsalStatus.Reviewed)
                return new ReviewedAlready();
            var letter = rehearsal.Value.Feedback is null
                ? await thanks.AtOnce(LinkDoor.Desk(link), rehearsal.Value, cancel)
                : null;
            var note = door.Note(link, "feedback-received", rehearsalId)
                .With(
                    link.ClientId,
                    ToldFacts.Of(rehearsal.Value.Feedback),
                    ToldFacts.Of(feedback)
                );
            rehearsal.Value.Tell(feedback with { ReceivedAt = calendar.Now });
            if (await received.Receive(rehearsal, key, note, letter, cancel) != Receipt.Conflict)
                return new FeedbackReceived();
        }
        return new NothingToTell();
    }
}
