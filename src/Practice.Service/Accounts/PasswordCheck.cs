using Microsoft.AspNetCore.Identity;
using Practice.Store.Accounts;

namespace Practice.Service.Accounts;

internal static class PasswordCheck
{
    /// <summary>Whether somebody at an open screen knows the password; wrong ones count as at the door.</summary>
    public static async Task<bool> IsPassword(
        this UserManager<Account> accounts,
        Account account,
        string password
    )
    {
        if (await accounts.IsLockedOutAsync(account))
            return false;
        if (await accounts.CheckPasswordAsync(account, password))
        {
            await accounts.ResetAccessFailedCountAsync(account);
            return true;
        }
        await accounts.AccessFailedAsync(account);
        return false;
    }
}
