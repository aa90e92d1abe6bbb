using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Practices;
using Practice.Service.Desks;
using Practice.Service.Hosting;
using Practice.Store.Mail;

namespace Practice.Service.Mail;

/// <summary>How the practice sends letters, and which did not go out.</summary>
/// <param name="Server">The mail server; null where none is set.</param>
/// <param name="HasFolder">Whether letters land in a folder of this machine while no server is set.</param>
/// <param name="Unsent">Letters of the last month that wait or were given up, the latest first.</param>
public sealed record MailFile(MailServer? Server, bool HasFolder, ImmutableArray<Letter> Unsent);

/// <summary>Opens the practice's mail.</summary>
public sealed class OpenMail(
    MailServerStore servers,
    LetterStore letters,
    PracticeSettings settings,
    PracticeCalendar calendar
)
{
    public async Task<MailFile> Run(Desk desk, CancellationToken cancel)
    {
        NotAllowedException.Unless(desk.MayRunPractice);
        return new MailFile(
            await servers.Find(desk.PracticeId, cancel),
            settings.MailFolder is not null,
            await letters.Unsent(desk.PracticeId, calendar.Now - Duration.FromDays(30), cancel)
        );
    }
}
