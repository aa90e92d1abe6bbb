using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.Identity;
using Microsoft.AspNetCore.Identity.EntityFrameworkCore;

namespace Practice.Store.Accounts;

/// <summary>
/// Identity's store under row security. Who signs in has no practice yet: each search tells the database what was said
/// at the door, and that one account is shown. Every change is made inside the account's own practice.
/// </summary>
internal sealed class AccountStore(
    PracticeDb context,
    IDataProtectionProvider keys,
    IdentityErrorDescriber? describer = null
)
    : UserOnlyStore<
        Account,
        PracticeDb,
        Guid,
        IdentityUserClaim<Guid>,
        IdentityUserLogin<Guid>,
        IdentityUserToken<Guid>,
        IdentityUserPasskey<Guid>
    >(context, describer)
{
    private readonly IDataProtector _seal = keys.CreateProtector("practice.account-token");

    /// <summary>The authenticator's key and the recovery codes are kept sealed: a reader of the table cannot use them.</summary>
    public override Task SetTokenAsync(
        Account user,
        string loginProvider,
        string name,
        string? value,
        CancellationToken cancellationToken
    ) =>
        base.SetTokenAsync(
            user,
            loginProvider,
            name,
            value is null ? null : _seal.Protect(value),
            cancellationToken
        );

    public override async Task<string?> GetTokenAsync(
        Account user,
        string loginProvider,
        string name,
        CancellationToken cancellationToken
    ) =>
        await base.GetTokenAsync(user, loginProvider, name, cancellationToken) is { } value
            ? _seal.Unprotect(value)
            : null;

    public override Task<Account?> FindByIdAsync(string userId, CancellationToken cancel = default)
    {
        Context.AtTheDoor = userId;
        return base.FindByIdAsync(userId, cancel);
    }

    public override Task<Account?> FindByNameAsync(
        string normalizedUserName,
        CancellationToken cancel = default
    )
    {
        Context.AtTheDoor = normalizedUserName;
        return base.FindByNameAsync(normalizedUserName, cancel);
    }

    public override Task<Account?> FindByEmailAsync(
        string normalizedEmail,
        CancellationToken cancel = default
    )
    {
        Context.AtTheDoor = normalizedEmail;
        return base.FindByEmailAsync(normalizedEmail, cancel);
    }

    public override Task<Account?> FindByPasskeyIdAsync(
        byte[] credentialId,
        CancellationToken cancel
    )
    {
        Context.AtTheDoor = Convert.ToHexStringLower(credentialId);
        return base.FindByPasskeyIdAsync(credentialId, cancel);
    }

    protected override Task<Account?> FindUserAsync(Guid userId, CancellationToken cancel)
    {
        Context.AtTheDoor = userId.ToString();
        return base.FindUserAsync(userId, cancel);
    }

    public override Task<IdentityResult> CreateAsync(
        Account user,
        CancellationToken cancel = default
    )
    {
        Context.Practice = user.PracticeId;
        return base.CreateAsync(user, cancel);
    }

    public override Task<IdentityResult> UpdateAsync(
        Account user,
        CancellationToken cancel = default
    )
    {
        Context.Practice = user.PracticeId;
        return base.UpdateAsync(user, cancel);
    }

    public override Task<IdentityResult> DeleteAsync(
        Account user,
        CancellationToken cancel = default
    )
    {
        Context.Practice = user.PracticeId;
        return base.DeleteAsync(user, cancel);
    }

    public override Task AddOrUpdatePasskeyAsync(
        Account user,
        UserPasskeyInfo passkey,
        CancellationToken cancel
    )
    {
        Context.Practice = user.PracticeId;
        return base.AddOrUpdatePasskeyAsync(user, passkey, cancel);
    }

    public override Task RemovePasskeyAsync(
        Account user,
        byte[] credentialId,
        CancellationToken cancel
    )
    {
        Context.Practice = user.PracticeId;
        return base.RemovePasskeyAsync(user, credentialId, cancel);
    }
}
