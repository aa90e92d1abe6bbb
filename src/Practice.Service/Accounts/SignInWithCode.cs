using Microsoft.AspNetCore.Identity;
using Practice.Store.Accounts;

namespace Practice.Service.Accounts;

/// <summary>The second step after a password: a code of the authenticator, or one of the recovery codes.</summary>
public sealed class SignInWithCode(SignInManager<Account> door)
{
    /// <summary>Whether somebody stands before this step.</summary>
    public async Task<bool> IsAsked() =>
        await door.GetTwoFactorAuthenticationUserAsync() is not null;

    /// <param name="code">Six digits of the authenticator, or a recovery code.</param>
    /// <param name="stay">Whether the cookie outlives the browser.</param>
    public async Task<SignInOutcome> Run(string code, bool stay)
    {
        var typed = code.Replace(" ", "", StringComparison.Ordinal).Trim();
        var result = typed.All(char.IsAsciiDigit)
            ? await door.TwoFactorAuthenticatorSignInAsync(typed, stay, rememberClient: false)
            : await door.TwoFactorRecoveryCodeSignInAsync(typed.ToUpperInvariant());
        return result.Succeeded ? SignInOutcome.SignedIn : SignInOutcome.Wrong;
    }
}
