using Practice.Domain.Practices;
using Practice.Domain.Rehearsals;
using Practice.Service.Desks;
using Practice.Store.Mail;
using Practice.Store.Rehearsals;

namespace Practice.Service.Mail;

/// <summary>Thanks a client for what she told of a rehearsal, once.</summary>
public sealed class SendThanks(
    RehearsalStore rehearsals,
    Addressees addressees,
    LetterDesk letters,
    LetterStore outbox,
    PracticeCalendar calendar
)
{
    /// <param name="desk">Who acts.</param>
    /// <param name="rehearsalId">Which rehearsal.</param>
    /// <param name="cancel">Cancels.</param>
    public async Task<SendOutcome> Run(Desk desk, Guid rehearsalId, CancellationToken cancel)
    {
        if (
            await rehearsals.Find(desk.PracticeId, rehearsalId, cancel)
                is not { Value: { Feedback: not null } rehearsal }
            || await addressees.OfRace(desk, rehearsal.RaceId, cancel) is not { } to
        )
            return new NothingToSend();
        if (to.Client.Email is not { } address)
            return new NoAddress(to.Client.Id);
        return await outbox.PostOnce(
            Write(desk, to, address, rehearsal),
            null,
            desk.Note("feedback-thanked", rehearsalId, calendar.Now),
            cancel
        )
            ? new Posted(address)
            : new SaidBefore();
    }

    /// <summary>The letter that goes out at once, where the practice wants it so and the client agreed.</summary>
    internal async Task<Letter?> AtOnce(Desk desk, Rehearsal rehearsal, CancellationToken cancel) =>
        await addressees.OfRace(desk, rehearsal.RaceId, cancel)
            is {
                Practice: { Defaults.ThanksAtOnce: true } practice,
                StandingAddress: { } address
            } to
            ? Write(Desk.Of(practice), to, address, rehearsal)
            : null;

    private Letter Write(Desk desk, Addressee to, string address, Rehearsal rehearsal) =>
        letters.Write(
            desk,
            LetterKind.Thanks,
            address,
            to.Client.Id,
            LetterTexts.Thanks(to, desk.Name, rehearsal),
            rehearsal
        );
}
