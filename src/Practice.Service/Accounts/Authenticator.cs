using System.Collections.Immutable;
using Microsoft.AspNetCore.Identity;
using Practice.Service.Desks;
using Practice.Service.Portal;
using Practice.Store.Accounts;
using Practice.Store.Audit;

namespace Practice.Service.Accounts;

/// <summary>What an authenticator needs to make codes.</summary>
/// <param name="Key">The key to type, in groups of four.</param>
/// <param name="Address">The same as an address for programs that take one.</param>
/// <param name="Squares">The same to be read by a camera.</param>
public sealed record AuthenticatorKey(string Key, string Address, LinkSquares Squares);

/// <summary>What became of tying an authenticator to an account.</summary>
public abstract record AuthenticatorOutcome;

/// <summary>From now on a code is asked for after the password.</summary>
/// <param name="RecoveryCodes">Codes for the day the authenticator is lost; shown this once.</param>
public sealed record AuthenticatorOn(ImmutableArray<string> RecoveryCodes) : AuthenticatorOutcome;

/// <summary>The code is not the one that the key makes now.</summary>
public sealed record WrongCode : AuthenticatorOutcome;

/// <summary>Ties an authenticator to the own account.</summary>
public sealed class SetUpAuthenticator(
    OwnAccount own,
    UserManager<Account> accounts,
    AuditLog audit,
    PracticeCalendar calendar
)
{
    internal const int RecoveryCodes = 10;

    /// <summary>The key; a new one each time until it is confirmed with a code.</summary>
    public async Task<AuthenticatorKey> Question(Desk desk)
    {
        var account = await own.Of(desk);
        var key = await accounts.GetAuthenticatorKeyAsync(account);
        if (string.IsNullOrEmpty(key))
        {
            await accounts.ResetAuthenticatorKeyAsync(account);
            key = await accounts.GetAuthenticatorKeyAsync(account);
        }
        var address =
            $"otpauth://totp/Practice:{Uri.EscapeDataString(account.Email!)}?secret={key}&issuer=Practice&digits=6";
        return new AuthenticatorKey(
            string.Join(' ', key!.Chunk(4).Select(c => new string(c))).ToLowerInvariant(),
            address,
            LinkSquares.Of(new Uri(address))
        );
    }

    public async Task<AuthenticatorOutcome> Run(Desk desk, string code, CancellationToken cancel)
    {
        var account = await own.Of(desk);
        var digits = code.Replace(" ", "", StringComparison.Ordinal);
        if (
            !await accounts.VerifyTwoFactorTokenAsync(
                account,
                accounts.Options.Tokens.AuthenticatorTokenProvider,
                digits
            )
        )
            return new WrongCode();
        await accounts.SetTwoFactorEnabledAsync(account, true);
        var codes = await accounts.GenerateNewTwoFactorRecoveryCodesAsync(account, RecoveryCodes);
        await audit.Note(desk.Note("authenticator-added", account.Id, calendar.Now), cancel);
        return new AuthenticatorOn([.. codes!]);
    }
}

/// <summary>Unties the authenticator from the own account. The password is asked for again: an open screen is not enough.</summary>
public sealed class DropAuthenticator(
    OwnAccount own,
    UserManager<Account> accounts,
    AuditLog audit,
    PracticeCalendar calendar
)
{
    /// <returns>Whether the password was right.</returns>
    public async Task<bool> Run(Desk desk, string password, CancellationToken cancel)
    {
        var account = await own.Of(desk);
        if (!await accounts.IsPassword(account, password))
            return false;
        await accounts.SetTwoFactorEnabledAsync(account, false);
        await accounts.ResetAuthenticatorKeyAsync(account);
        await audit.Note(desk.Note("authenticator-removed", account.Id, calendar.Now), cancel);
        return true;
    }
}

/// <summary>Makes new recovery codes; the old ones open nothing any more.</summary>
public sealed class NewRecoveryCodes(
    OwnAccount own,
    UserManager<Account> accounts,
    AuditLog audit,
    PracticeCalendar calendar
)
{
    /// <returns>The codes; null when the password was wrong.</returns>
    public async Task<ImmutableArray<string>?> Run(
        Desk desk,
        string password,
        CancellationToken cancel
    )
    {
        var account = await own.Of(desk);
        if (!account.TwoFactorEnabled || !await accounts.IsPassword(account, password))
            return null;
        var codes = await accounts.GenerateNewTwoFactorRecoveryCodesAsync(
            account,
            SetUpAuthenticator.RecoveryCodes
        );
        await audit.Note(desk.Note("recovery-codes-made", account.Id, calendar.Now), cancel);
        return [.. codes!];
    }
}
