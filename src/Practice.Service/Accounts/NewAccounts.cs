using Microsoft.AspNetCore.Identity;
using Practice.Domain.Practices;
using Practice.Store.Accounts;

namespace Practice.Service.Accounts;

/// <summary>What somebody says of herself who gets an account.</summary>
/// <param name="Name">Name as shown, 1 to 200 characters.</param>
/// <param name="Email">Where to write to, and the name to sign in with.</param>
/// <param name="Password">Password in the clear.</param>
public sealed record NewMember(string Name, string Email, string Password);

/// <summary>Makes accounts ready to be filed, so that they are filed together with what lets them in.</summary>
public sealed class NewAccounts(UserManager<Account> accounts)
{
    /// <returns>The account, or why it cannot be.</returns>
    internal async Task<(Account? Account, string Refusal)> Prepare(
        Guid practiceId,
        NewMember member,
        StaffRole role
    )
    {
        var email = member.Email.Trim();
        var account = new Account
        {
            Id = Guid.CreateVersion7(),
            PracticeId = practiceId,
            UserName = email,
            Email = email,
            EmailConfirmed = true,
            DisplayName = member.Name.Trim(),
            Role = role,
            LockoutEnabled = true,
            SecurityStamp = Guid.NewGuid().ToString("N"),
        };
        foreach (var rule in accounts.PasswordValidators)
            if (
                await rule.ValidateAsync(accounts, account, member.Password) is
                { Succeeded: false } broken
            )
                return (null, string.Join(' ', broken.Errors.Select(e => e.Description)));
        if (await accounts.FindByNameAsync(email) is not null)
            return (null, "This address has an account already. Sign in, or take another one.");
        await accounts.UpdateNormalizedUserNameAsync(account);
        await accounts.UpdateNormalizedEmailAsync(account);
        account.PasswordHash = accounts.PasswordHasher.HashPassword(account, member.Password);
        return (account, "");
    }
}
