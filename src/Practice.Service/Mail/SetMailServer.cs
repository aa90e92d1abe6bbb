using Practice.Domain.Practices;
using Practice.Service.Desks;
using Practice.Store.Mail;

namespace Practice.Service.Mail;

/// <summary>What the mail form says.</summary>
/// <param name="Host">Name of the machine, 1 to 255 characters.</param>
/// <param name="Port">Port, 1 to 65535.</param>
/// <param name="Security">How it wants to be spoken to.</param>
/// <param name="User">Name to sign in with; empty for a server that asks for none.</param>
/// <param name="Password">Password; null keeps the one on file.</param>
/// <param name="From">Address that letters come from.</param>
public sealed record MailServerDetails(
    string Host,
    int Port,
    MailSecurity Security,
    string User,
    string? Password,
    string From
);

/// <summary>Sets the mail server of the practice, or takes it away.</summary>
public sealed class SetMailServer(
    MailServerStore servers,
    LetterSeal seal,
    PracticeCalendar calendar
)
{
    /// <param name="desk">Who acts.</param>
    /// <param name="details">The server; null for none.</param>
    /// <param name="cancel">Cancels.</param>
    public async Task Run(Desk desk, MailServerDetails? details, CancellationToken cancel)
    {
        NotAllowedException.Unless(desk.MayRunPractice);
        await servers.Set(
            desk.PracticeId,
            details is null ? null : await Read(desk, details, cancel),
            desk.Note(
                details is null ? "mail-server-removed" : "mail-server-set",
                desk.PracticeId,
                calendar.Now,
                details?.Host ?? ""
            ),
            cancel
        );
    }

    private async Task<MailServer> Read(
        Desk desk,
        MailServerDetails details,
        CancellationToken cancel
    ) =>
        new()
        {
            PracticeId = desk.PracticeId,
            Host = details.Host.Trim(),
            Port = details.Port,
            Security = details.Security,
            User = details.User.Trim(),
            SealedPassword = details.Password is { } password
                ? seal.SealPassword(password)
                : await KeptPassword(desk, details, cancel),
            From = details.From.Trim(),
        };

    /// <summary>A password is kept for the server it was given for, and never shown to another.</summary>
    private async Task<System.Collections.Immutable.ImmutableArray<byte>> KeptPassword(
        Desk desk,
        MailServerDetails details,
        CancellationToken cancel
    ) =>
        await servers.Find(desk.PracticeId, cancel) is { } kept
        && string.Equals(kept.Host, details.Host.Trim(), StringComparison.OrdinalIgnoreCase)
            ? kept.SealedPassword
            : [];
}
