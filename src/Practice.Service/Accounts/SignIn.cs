using Microsoft.AspNetCore.Identity;
using Practice.Store.Accounts;

namespace Practice.Service.Accounts;

/// <summary>What became of signing in.</summary>
public enum SignInOutcome
{
    /// <summary>Signed in; the cookie is set.</summary>
    SignedIn,

    /// <summary>The password is right; a code of the authenticator is asked for as well.</summary>
    CodeNeeded,

    /// <summary>
    /// Not let in: address and password do not go together, or there were too many tries, or the member left the team.
    /// Which of them is not told, since each answer would tell whether the address is known.
    /// </summary>
    Wrong,
}

/// <summary>Signs a member of a practice in with a password.</summary>
public sealed class SignIn(SignInManager<Account> manager, UserManager<Account> accounts)
{
    private static readonly Account Nobody = new();
    private static readonly string NobodysHash = new PasswordHasher<Account>().HashPassword(
        Nobody,
        Guid.NewGuid().ToString()
    );

    /// <param name="email">Address.</param>
    /// <param name="password">Password.</param>
    /// <param name="stay">Whether the cookie outlives the browser.</param>
    public async Task<SignInOutcome> Run(string email, string password, bool stay)
    {
        if (await accounts.FindByNameAsync(email) is not { } account)
        {
            // an unknown address takes as long as a wrong password
            accounts.PasswordHasher.VerifyHashedPassword(Nobody, NobodysHash, password);
            return SignInOutcome.Wrong;
        }
        var result = await manager.PasswordSignInAsync(
            account,
            password,
            stay,
            lockoutOnFailure: true
        );
        return result switch
        {
            { Succeeded: true } => SignInOutcome.SignedIn,
            { RequiresTwoFactor: true } => SignInOutcome.CodeNeeded,
            _ => SignInOutcome.Wrong,
        };
    }
}
