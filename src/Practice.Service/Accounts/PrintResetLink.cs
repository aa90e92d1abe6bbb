using Microsoft.AspNetCore.Identity;
using Practice.Domain.Practices;
using Practice.Service.Desks;
using Practice.Service.Hosting;
using Practice.Store.Accounts;
using Practice.Store.Audit;

namespace Practice.Service.Accounts;

/// <summary>
/// For whoever runs the program: a link to choose a new password, for a member whom no letter reaches. The practice reads in
/// its audit that one was made.
/// </summary>
public sealed class PrintResetLink(
    UserManager<Account> accounts,
    AuditLog audit,
    PracticeSettings settings,
    PracticeCalendar calendar
)
{
    /// <returns>
    /// The link, good once and for two hours, without the site where no address is set; null when nobody at work signs in
    /// with the address.
    /// </returns>
    public async Task<string?> Run(string email, CancellationToken cancel)
    {
        if (await accounts.FindByNameAsync(email.Trim()) is not { DeactivatedAt: null } account)
            return null;
        var page = ResetLink.Of(account, await accounts.GeneratePasswordResetTokenAsync(account));
        await audit.Note(
            new AuditEntry
            {
                PracticeId = account.PracticeId,
                At = calendar.Now,
                By = "Whoever runs the program",
                What = "password-reset-link-made",
                About = account.Id,
            },
            cancel
        );
        return settings.Address is null ? $"/{page}" : settings.Link("", page);
    }
}
