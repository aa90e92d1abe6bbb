using Microsoft.AspNetCore.Identity;
using Practice.Store.Accounts;

namespace Practice.Service.Accounts;

/// <summary>Length is asked for elsewhere; this refuses what is long and guessed at once.</summary>
internal sealed class PasswordRules : IPasswordValidator<Account>
{
    private const int FewestDifferent = 5;
    private const int Longest = 200;

    private static readonly string[] Rows =
    [
        "abcdefghijklmnopqrstuvwxyz",
        "0123456789012345678901234567890",
        "qwertyuiopasdfghjklzxcvbnm",
        "passwordpasswordpassword",
        "letmeinletmeinletmein",
    ];

    public Task<IdentityResult> ValidateAsync(
        UserManager<Account> manager,
        Account user,
        string? password
    ) => Task.FromResult(Of(user, (password ?? "").ToLowerInvariant()));

    private static IdentityResult Of(Account user, string password)
    {
        if (password.Length > Longest)
            return Refused($"Take a password of at most {Longest} characters.");
        if (
            password.Distinct().Count() < FewestDifferent
            || Rows.Any(row => row.Contains(password, StringComparison.Ordinal))
        )
            return Refused(
                "That password is guessed at once. Take three or four words of your own."
            );
        var own = (user.Email ?? "").Split('@')[0].ToLowerInvariant();
        return own.Length > 3 && password.Contains(own, StringComparison.Ordinal)
            ? Refused("The password has your address in it. Take other words.")
            : IdentityResult.Success;
    }

    private static IdentityResult Refused(string why) =>
        IdentityResult.Failed(new IdentityError { Code = "Guessable", Description = why });
}
