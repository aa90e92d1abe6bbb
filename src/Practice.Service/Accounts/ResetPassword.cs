using Microsoft.AspNetCore.Identity;
using Practice.Domain.Practices;
using Practice.Service.Desks;
using Practice.Service.Hosting;
using Practice.Service.Mail;
using Practice.Store.Accounts;
using Practice.Store.Audit;
using Practice.Store.Mail;

namespace Practice.Service.Accounts;

/// <summary>Sends a link to choose a new password, to an address that has an account. Nobody is told whether it has.</summary>
public sealed class AskForReset(
    UserManager<Account> accounts,
    LetterDesk letters,
    LetterStore outbox,
    PracticeSettings settings,
    PracticeCalendar calendar
)
{
    /// <param name="email">Address typed at the door.</param>
    /// <param name="reached">The address under which the program was reached, for the link.</param>
    /// <param name="from">From where.</param>
    /// <param name="cancel">Cancels.</param>
    public async Task Run(string email, string reached, string from, CancellationToken cancel)
    {
        if (await accounts.FindByNameAsync(email.Trim()) is not { DeactivatedAt: null } account)
            return;
        var token = await accounts.GeneratePasswordResetTokenAsync(account);
        var link = settings.Link(reached, ResetLink.Of(account, token));
        var desk = new Desk(account.PracticeId, account.Id, account.DisplayName, account.Role)
        {
            From = from,
        };
        var text = LetterTexts.PasswordReset(
            await letters.Letterhead(desk, cancel),
            account.DisplayName,
            link
        );
        await outbox.Post(
            letters.Write(desk, LetterKind.PasswordReset, account.Email!, null, text),
            desk.Note("password-reset-asked", account.Id, calendar.Now),
            cancel
        );
    }
}

/// <summary>Sets a new password for whoever brings the link. All sessions of the account end.</summary>
public sealed class ResetPassword(
    UserManager<Account> accounts,
    SessionStore sessions,
    AuditLog audit,
    PracticeCalendar calendar
)
{
    /// <returns>Why not; null when the new password is set.</returns>
    public async Task<string?> Run(
        Guid accountId,
        string token,
        string password,
        string from,
        CancellationToken cancel
    )
    {
        if (
            await accounts.FindByIdAsync(accountId.ToString())
            is not { DeactivatedAt: null } account
        )
            return LinkIsSpent;
        var result = await accounts.ResetPasswordAsync(account, token, password);
        if (!result.Succeeded)
            return result.Errors.Any(e => e.Code == nameof(IdentityErrorDescriber.InvalidToken))
                ? LinkIsSpent
                : string.Join(' ', result.Errors.Select(e => e.Description));
        await accounts.SetLockoutEndDateAsync(account, null);
        await sessions.EndOthers(account.PracticeId, account.Id, null, calendar.Now, cancel);
        var desk = new Desk(account.PracticeId, account.Id, account.DisplayName, account.Role)
        {
            From = from,
        };
        await audit.Note(desk.Note("password-reset", account.Id, calendar.Now), cancel);
        return null;
    }

    private const string LinkIsSpent =
        "This link was used already or is older than two hours. Ask for a new one.";
}
