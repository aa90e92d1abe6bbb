using Practice.Domain.Practices;
using Practice.Service.Desks;
using Practice.Store.Audit;
using Practice.Store.Mail;
using Practice.Store.Practices;

namespace Practice.Service.Mail;

/// <summary>Sends a letter at once to whoever asks, to see whether the mail server takes it.</summary>
public sealed class TryMailServer(
    LetterDesk letters,
    MailServerStore servers,
    Carrier carrier,
    PracticeStore practices,
    AuditLog audit,
    PracticeCalendar calendar
)
{
    /// <returns>What went wrong; null when it is on its way.</returns>
    public async Task<string?> Run(Desk desk, CancellationToken cancel)
    {
        NotAllowedException.Unless(desk.MayRunPractice);
        var team = await practices.Team(desk.PracticeId, cancel);
        if (team.FirstOrDefault(m => m.AccountId == desk.AccountId) is not { } me)
            return "Your account has no address to write to.";
        var letter = letters.Write(
            desk,
            LetterKind.Test,
            me.Email,
            null,
            LetterTexts.Test(await letters.Letterhead(desk, cancel))
        );
        var server = await servers.Find(desk.PracticeId, cancel);
        var result = await carrier.Carry(letter, server, cancel);
        await audit.Note(desk.Note("mail-server-tried", desk.PracticeId, calendar.Now), cancel);
        return result.Problem;
    }
}
