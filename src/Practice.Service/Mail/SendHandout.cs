using Practice.Domain.Plans;
using Practice.Domain.Practices;
using Practice.Service.Desks;
using Practice.Service.Plans;
using Practice.Store.Clients;
using Practice.Store.Mail;
using Practice.Store.Plans;
using Practice.Store.Races;

namespace Practice.Service.Mail;

/// <summary>What became of sending.</summary>
public abstract record SendOutcome;

/// <summary>The letter is in the outbox.</summary>
/// <param name="To">Address it goes to.</param>
public sealed record Posted(string To) : SendOutcome;

/// <summary>The client has no address on file.</summary>
/// <param name="ClientId">Whose.</param>
public sealed record NoAddress(Guid ClientId) : SendOutcome;

/// <summary>Only an issued version is sent.</summary>
public sealed record NotIssued : SendOutcome;

/// <summary>Sends an issued plan to the client as a paper.</summary>
public sealed class SendHandout(
    PlanStore plans,
    RaceStore races,
    ClientStore clients,
    PrintPlan print,
    LetterDesk letters,
    LetterStore outbox,
    PracticeCalendar calendar
)
{
    /// <param name="desk">Who acts.</param>
    /// <param name="versionId">Which version.</param>
    /// <param name="variant">For whom; a number-free plan stays so whatever is asked.</param>
    /// <param name="cancel">Cancels.</param>
    public async Task<SendOutcome> Run(
        Desk desk,
        Guid versionId,
        PaperVariant variant,
        CancellationToken cancel
    )
    {
        if (
            await plans.Find(desk.PracticeId, versionId, cancel)
                is not { Value: { Status: PlanStatus.Issued } version }
            || await races.Find(desk.PracticeId, version.RaceId, cancel) is not { Value: var race }
            || await clients.Find(desk.PracticeId, race.ClientId, cancel)
                is not { Value: var client }
        )
            return new NotIssued();
        if (client.Email is not { } address)
            return new NoAddress(client.Id);
        if (await print.Run(desk, versionId, null, variant, cancel) is not { } paper)
            return new NotIssued();
        var text = LetterTexts.Handout(
            await letters.Letterhead(desk, cancel),
            client.GivenName,
            race.Name,
            desk.Name,
            new Enclosure(paper.FileName, "application/pdf", paper.Pdf)
        );
        await outbox.Post(
            letters.Write(desk, LetterKind.Handout, address, client.Id, text),
            desk.Note("handout-sent", client.Id, calendar.Now, $"version {version.Number}"),
            cancel
        );
        return new Posted(address);
    }
}
