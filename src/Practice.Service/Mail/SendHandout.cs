using Practice.Domain.Plans;
using Practice.Domain.Practices;
using Practice.Service.Desks;
using Practice.Service.Plans;
using Practice.Store.Mail;
using Practice.Store.Plans;

namespace Practice.Service.Mail;

/// <summary>Sends an issued plan to the client as a paper.</summary>
public sealed class SendHandout(
    PlanStore plans,
    Addressees addressees,
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
            || await addressees.OfRace(desk, version.RaceId, cancel) is not { } to
        )
            return new NothingToSend();
        if (to.Client.Email is not { } address)
            return new NoAddress(to.Client.Id);
        if (await print.Run(desk, versionId, null, variant, cancel) is not { } paper)
            return new NothingToSend();
        var text = LetterTexts.Handout(
            to,
            desk.Name,
            new Enclosure(paper.FileName, "application/pdf", paper.Pdf)
        );
        await outbox.Post(
            letters.Write(desk, LetterKind.Handout, address, to.Client.Id, text),
            desk.Note("handout-sent", to.Client.Id, calendar.Now, $"version {version.Number}"),
            cancel
        );
        return new Posted(address);
    }
}
