using Microsoft.AspNetCore.Identity;
using Practice.Service.Desks;
using Practice.Store.Accounts;

namespace Practice.Service.Accounts;

/// <summary>The account of whoever acts: every task about sign-in reaches that one and no other.</summary>
public sealed class OwnAccount(UserManager<Account> accounts)
{
    /// <exception cref="InvalidOperationException">The desk has no account that may sign in.</exception>
    internal async Task<Account> Of(Desk desk) =>
        await accounts.FindByIdAsync(desk.AccountId.ToString()) is { DeactivatedAt: null } account
        && account.PracticeId == desk.PracticeId
            ? account
            : throw new InvalidOperationException("The account is not on file.");

    internal static string Why(IdentityResult result) =>
        string.Join(' ', result.Errors.Select(e => e.Description));
}
