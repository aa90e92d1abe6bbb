using Microsoft.AspNetCore.Identity;
using Practice.Service.Desks;
using Practice.Store.Accounts;
using Practice.Store.Audit;

namespace Practice.Service.Accounts;

/// <summary>Changes the own password; every other session ends.</summary>
public sealed class ChangePassword(
    OwnAccount own,
    UserManager<Account> accounts,
    SessionStore sessions,
    AuditLog audit,
    PracticeCalendar calendar
)
{
    /// <param name="desk">Who acts.</param>
    /// <param name="current">The password as it is.</param>
    /// <param name="chosen">The password as it shall be.</param>
    /// <param name="here">The session that stays.</param>
    /// <param name="cancel">Cancels.</param>
    /// <returns>Why not; null when it is changed.</returns>
    public async Task<string?> Run(
        Desk desk,
        string current,
        string chosen,
        Guid? here,
        CancellationToken cancel
    )
    {
        var account = await own.Of(desk);
        if (!await accounts.IsPassword(account, current))
            return "The password as it is now is another one.";
        var result = await accounts.ChangePasswordAsync(account, current, chosen);
        if (!result.Succeeded)
            return OwnAccount.Why(result);
        await sessions.EndOthers(desk.PracticeId, desk.AccountId, here, calendar.Now, cancel);
        await audit.Note(desk.Note("password-changed", account.Id, calendar.Now), cancel);
        return null;
    }
}
