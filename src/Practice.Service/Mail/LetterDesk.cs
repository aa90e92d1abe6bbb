using Practice.Domain.Practices;
using Practice.Domain.Rehearsals;
using Practice.Service.Desks;
using Practice.Store.Practices;

namespace Practice.Service.Mail;

/// <summary>Writes letters for the tasks that send one; each files it together with what it tells of.</summary>
public sealed class LetterDesk(LetterSeal seal, PracticeStore practices, PracticeCalendar calendar)
{
    /// <param name="desk">Who has it sent.</param>
    /// <param name="kind">What it is about.</param>
    /// <param name="to">Address it goes to.</param>
    /// <param name="clientId">The client it goes to; null for a member of the team.</param>
    /// <param name="content">What it says.</param>
    /// <param name="about">The rehearsal it is about; null for any other letter.</param>
    internal Letter Write(
        Desk desk,
        LetterKind kind,
        string to,
        Guid? clientId,
        LetterContent content,
        Rehearsal? about = null
    ) =>
        Letter.Write(
            desk.PracticeId,
            clientId,
            kind,
            to,
            content.Subject.Length > 200 ? content.Subject[..200] : content.Subject,
            seal.Seal(content),
            desk.Name,
            calendar.Now,
            about is null ? null : new RehearsalDay(about.Id, about.RunOn)
        );

    internal async Task<PracticeProfile> Letterhead(Desk desk, CancellationToken cancel) =>
        (await practices.Find(desk.PracticeId, cancel))?.Value
        ?? throw new InvalidOperationException("The practice is not on file.");
}
