using Practice.Domain.Practices;
using Practice.Service.Desks;
using Practice.Service.Hosting;
using Practice.Service.Portal;
using Practice.Store.Mail;

namespace Practice.Service.Mail;

/// <summary>
/// Sends a client a private link to the phone pages of a race. It is a new link: of those given before only the
/// fingerprint is kept. It goes on file together with its letter.
/// </summary>
public sealed class SendLink(
    Addressees addressees,
    LetterDesk letters,
    LetterStore outbox,
    PracticeSettings settings,
    PracticeCalendar calendar
)
{
    /// <param name="desk">Who acts.</param>
    /// <param name="raceId">The race whose pages it opens.</param>
    /// <param name="reached">The address under which the program was reached, for the link.</param>
    /// <param name="cancel">Cancels.</param>
    public async Task<SendOutcome> Run(
        Desk desk,
        Guid raceId,
        string reached,
        CancellationToken cancel
    )
    {
        if (await addressees.OfRace(desk, raceId, cancel) is not { } to)
            return new NothingToSend();
        if (to.Client.Email is not { } address)
            return new NoAddress(to.Client.Id);
        var given = GivenLink.New(desk, to.Race, calendar.Now);
        var text = LetterTexts.PhoneLink(
            to,
            desk.Name,
            settings.Link(reached, given.Path),
            calendar.DayOf(given.Link.ExpiresAt)
        );
        await outbox.PostOnce(
            letters.Write(desk, LetterKind.PhoneLink, address, to.Client.Id, text),
            given.Link,
            desk.Note("phone-link-sent", raceId, calendar.Now),
            cancel
        );
        return new Posted(address);
    }
}
