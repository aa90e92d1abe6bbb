using Microsoft.AspNetCore.Identity;
using Microsoft.AspNetCore.WebUtilities;
using Practice.Service.Desks;
using Practice.Store.Accounts;
using Practice.Store.Audit;

namespace Practice.Service.Accounts;

/// <summary>Adds a passkey to the own account.</summary>
public sealed class AddPasskey(
    OwnAccount own,
    SignInManager<Account> door,
    UserManager<Account> accounts,
    AuditLog audit,
    PracticeCalendar calendar
)
{
    private const int Most = 20;

    /// <summary>What the browser is asked, as JSON; a cookie remembers the question.</summary>
    public async Task<string> Question(Desk desk)
    {
        var account = await own.Of(desk);
        return await door.MakePasskeyCreationOptionsAsync(
            new PasskeyUserEntity
            {
                Id = account.Id.ToString(),
                Name = account.Email!,
                DisplayName = account.DisplayName,
            }
        );
    }

    /// <param name="desk">Who acts.</param>
    /// <param name="answer">What the browser answered, as JSON.</param>
    /// <param name="name">What to call it.</param>
    /// <param name="cancel">Cancels.</param>
    /// <returns>Why not; null when it is added.</returns>
    public async Task<string?> Run(Desk desk, string answer, string name, CancellationToken cancel)
    {
        var account = await own.Of(desk);
        if ((await accounts.GetPasskeysAsync(account)).Count >= Most)
            return "There are many passkeys already. Remove one first.";
        var attestation = await door.PerformPasskeyAttestationAsync(answer);
        if (!attestation.Succeeded || attestation.UserEntity.Id != account.Id.ToString())
            return "The browser's answer was not what was asked for. Try once more.";
        attestation.Passkey.Name = name.Trim();
        var added = await accounts.AddOrUpdatePasskeyAsync(account, attestation.Passkey);
        if (!added.Succeeded)
            return OwnAccount.Why(added);
        await audit.Note(desk.Note("passkey-added", account.Id, calendar.Now, name.Trim()), cancel);
        return null;
    }
}

/// <summary>Removes a passkey from the own account.</summary>
public sealed class RemovePasskey(
    OwnAccount own,
    UserManager<Account> accounts,
    AuditLog audit,
    PracticeCalendar calendar
)
{
    public async Task Run(Desk desk, string key, CancellationToken cancel)
    {
        var account = await own.Of(desk);
        byte[] credential;
        try
        {
            credential = WebEncoders.Base64UrlDecode(key);
        }
        catch (FormatException)
        {
            return;
        }
        if (await accounts.GetPasskeyAsync(account, credential) is null)
            return;
        await accounts.RemovePasskeyAsync(account, credential);
        await audit.Note(desk.Note("passkey-removed", account.Id, calendar.Now), cancel);
    }
}

/// <summary>Signs a member in with a passkey. It needs no name and no password, and no code on top: it is two things in one.</summary>
public sealed class SignInWithPasskey(SignInManager<Account> door, UserManager<Account> accounts)
{
    /// <summary>What the browser is asked, as JSON. It names nobody, so it tells nobody who has an account.</summary>
    public Task<string> Question() => door.MakePasskeyRequestOptionsAsync(null);

    /// <param name="answer">What the browser answered, as JSON.</param>
    public async Task<SignInOutcome> Run(string answer)
    {
        var assertion = await door.PerformPasskeyAssertionAsync(answer);
        if (
            !assertion.Succeeded
            || !await door.CanSignInAsync(assertion.User)
            || await accounts.IsLockedOutAsync(assertion.User)
        )
            return SignInOutcome.Wrong;
        // its counter and its last use are kept, so that a copied key can be told
        var kept = await accounts.AddOrUpdatePasskeyAsync(assertion.User, assertion.Passkey);
        if (!kept.Succeeded)
            return SignInOutcome.Wrong;
        await door.SignInAsync(assertion.User, isPersistent: false, "passkey");
        return SignInOutcome.SignedIn;
    }
}
