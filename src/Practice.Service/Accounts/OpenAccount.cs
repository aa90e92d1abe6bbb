using System.Collections.Immutable;
using Microsoft.AspNetCore.Identity;
using Microsoft.AspNetCore.WebUtilities;
using NodaTime;
using Practice.Domain.Practices;
using Practice.Service.Desks;
using Practice.Store.Accounts;

namespace Practice.Service.Accounts;

/// <summary>A passkey in a list.</summary>
/// <param name="Key">What to call it by when it is removed.</param>
/// <param name="Name">What its owner calls it.</param>
/// <param name="AddedAt">When it was added.</param>
public sealed record PasskeyRow(string Key, string Name, Instant AddedAt);

/// <summary>How somebody signs in, and where she is signed in.</summary>
/// <param name="Email">The name to sign in with.</param>
/// <param name="Passkeys">Her passkeys, oldest first.</param>
/// <param name="AsksForCode">Whether a code of the authenticator is asked for after the password.</param>
/// <param name="RecoveryCodesLeft">Recovery codes that were not used yet.</param>
/// <param name="Sessions">Where she is signed in, the latest seen first.</param>
public sealed record AccountFile(
    string Email,
    ImmutableArray<PasskeyRow> Passkeys,
    bool AsksForCode,
    int RecoveryCodesLeft,
    ImmutableArray<SignInSession> Sessions
);

/// <summary>Opens the own account.</summary>
public sealed class OpenAccount(
    OwnAccount own,
    UserManager<Account> accounts,
    SessionStore sessions,
    PracticeCalendar calendar
)
{
    /// <summary>A cookie that was not used for so long is void, so its session is not worth showing.</summary>
    internal static readonly Duration Forgotten = Duration.FromDays(14);

    public async Task<AccountFile> Run(Desk desk, CancellationToken cancel)
    {
        var account = await own.Of(desk);
        return new AccountFile(
            account.Email!,
            [
                .. (await accounts.GetPasskeysAsync(account))
                    .OrderBy(p => p.CreatedAt)
                    .Select(p => new PasskeyRow(
                        WebEncoders.Base64UrlEncode(p.CredentialId),
                        p.Name ?? "Passkey",
                        Instant.FromDateTimeOffset(p.CreatedAt)
                    )),
            ],
            account.TwoFactorEnabled,
            await accounts.CountRecoveryCodesAsync(account),
            await sessions.Of(desk.PracticeId, desk.AccountId, calendar.Now - Forgotten, cancel)
        );
    }
}
