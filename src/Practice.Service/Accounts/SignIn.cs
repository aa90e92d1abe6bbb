using Microsoft.AspNetCore.Identity;
using Practice.Service.Desks;
using Practice.Store.Accounts;
using Practice.Store.Audit;

namespace Practice.Service.Accounts;

/// <summary>What became of signing in.</summary>
public enum SignInOutcome
{
    /// <summary>Signed in; the cookie is set.</summary>
    SignedIn,

    /// <summary>Address and password do not go together. Which of them is wrong is not told.</summary>
    Wrong,

    /// <summary>Too many wrong tries; wait some minutes.</summary>
    LockedOut,
}

/// <summary>Signs a member of a practice in.</summary>
public sealed class SignIn(
    SignInManager<Account> manager,
    UserManager<Account> accounts,
    AuditLog audit,
    PracticeCalendar calendar
)
{
    /// <param name="email">Address.</param>
    /// <param name="password">Password.</param>
    /// <param name="stay">Whether the cookie outlives the browser.</param>
    /// <param name="cancel">Cancels.</param>
    public async Task<SignInOutcome> Run(
        string email,
        string password,
        bool stay,
        CancellationToken cancel
    )
    {
        if (await accounts.FindByNameAsync(email) is not { } account)
            return SignInOutcome.Wrong;
        var result = await manager.PasswordSignInAsync(
            account,
            password,
            stay,
            lockoutOnFailure: true
        );
        if (result.IsLockedOut)
            return SignInOutcome.LockedOut;
        if (!result.Succeeded)
            return SignInOutcome.Wrong;
        var desk = new Desk(account.PracticeId, account.Id, account.DisplayName, account.Role);
        await audit.Note(desk.Note("signed-in", account.Id, calendar.Now), cancel);
        return SignInOutcome.SignedIn;
    }
}
