using Practice.Domain.Practices;
using Practice.Domain.Rehearsals;
using Practice.Service.Desks;
using Practice.Service.Hosting;
using Practice.Service.Portal;
using Practice.Store.Mail;
using Practice.Store.Rehearsals;

namespace Practice.Service.Mail;

/// <summary>
/// Reminds a client of a rehearsal, with a link to what is eaten; once for the day it stands on, whoever asks. Nobody is
/// reminded of a rehearsal that a doctor has to allow first.
/// </summary>
public sealed class SendReminder(
    RehearsalStore rehearsals,
    Addressees addressees,
    LetterDesk letters,
    LetterStore outbox,
    PracticeSettings settings,
    PracticeCalendar calendar
)
{
    /// <param name="desk">Who acts.</param>
    /// <param name="rehearsalId">Which rehearsal.</param>
    /// <param name="reached">The address under which the program was reached, for the link.</param>
    /// <param name="cancel">Cancels.</param>
    public async Task<SendOutcome> Run(
        Desk desk,
        Guid rehearsalId,
        string reached,
        CancellationToken cancel
    )
    {
        if (
            await rehearsals.Find(desk.PracticeId, rehearsalId, cancel)
                is not { Value: { Status: RehearsalStatus.Booked } rehearsal }
            || rehearsal.RunOn < calendar.Today
            || await addressees.OfRace(desk, rehearsal.RaceId, cancel)
                is not { MayRehearse: true } to
        )
            return new NothingToSend();
        return to.Client.Email is { } address
            ? await Post(desk, to, address, rehearsal, settings.Address ?? new Uri(reached), cancel)
            : new NoAddress(to.Client.Id);
    }

    /// <summary>The same without anybody asking: only to a client who agreed to what is kept of her.</summary>
    internal async Task<SendOutcome> ByItself(
        Desk desk,
        Rehearsal rehearsal,
        CancellationToken cancel
    ) =>
        await addressees.OfRace(desk, rehearsal.RaceId, cancel)
            is { MayRehearse: true, StandingAddress: { } address } to
            ? await Post(desk, to, address, rehearsal, settings.Address, cancel)
            : new NothingToSend();

    private async Task<SendOutcome> Post(
        Desk desk,
        Addressee to,
        string address,
        Rehearsal rehearsal,
        Uri? site,
        CancellationToken cancel
    )
    {
        var given = site is null ? null : GivenLink.New(desk, to.Race, calendar.Now);
        var text = LetterTexts.Reminder(
            to,
            desk.Name,
            rehearsal,
            calendar.Today,
            given is null ? null : new Uri(site!, given.Path).ToString()
        );
        return await outbox.PostOnce(
            letters.Write(
                desk,
                LetterKind.RehearsalReminder,
                address,
                to.Client.Id,
                text,
                rehearsal
            ),
            given?.Link,
            desk.Note("rehearsal-reminded", rehearsal.Id, calendar.Now),
            cancel
        )
            ? new Posted(address)
            : new SaidBefore();
    }
}
