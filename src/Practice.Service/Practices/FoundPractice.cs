using Microsoft.AspNetCore.Identity;
using Practice.Domain.Practices;
using Practice.Service.Accounts;
using Practice.Service.Desks;
using Practice.Service.Hosting;
using Practice.Store.Accounts;
using Practice.Store.Practices;

namespace Practice.Service.Practices;

/// <summary>What became of founding.</summary>
public abstract record FoundOutcome;

/// <summary>Practice and owner are on file, and the owner is signed in.</summary>
public sealed record Founded : FoundOutcome;

/// <summary>That is not the code from the log.</summary>
public sealed record WrongSetUpCode : FoundOutcome;

/// <summary>There is a practice already.</summary>
public sealed record FoundedAlready : FoundOutcome;

/// <summary>The owner's account cannot be made so.</summary>
/// <param name="Why">What to change.</param>
public sealed record OwnerRefused(string Why) : FoundOutcome;

/// <summary>Founds the practice on a fresh installation, with its owner.</summary>
public sealed class FoundPractice(
    PracticeStore practices,
    NewAccounts accounts,
    SignInManager<Account> door,
    SetUpCode setUpCode,
    PracticeCalendar calendar
)
{
    /// <param name="code">The code from the log.</param>
    /// <param name="name">Name of the practice, 1 to 200 characters.</param>
    /// <param name="owner">Who runs it.</param>
    /// <param name="from">From where.</param>
    /// <param name="cancel">Cancels.</param>
    public async Task<FoundOutcome> Run(
        string code,
        string name,
        NewMember owner,
        string from,
        CancellationToken cancel
    )
    {
        if (await practices.AnyYet(cancel))
            return new FoundedAlready();
        if (!setUpCode.Is(code))
            return new WrongSetUpCode();
        var practice = new PracticeProfile
        {
            PracticeId = Guid.CreateVersion7(),
            Name = name.Trim(),
        };
        var (account, refusal) = await accounts.Prepare(
            practice.PracticeId,
            owner,
            StaffRole.Owner
        );
        if (account is null)
            return new OwnerRefused(refusal);
        var desk = new Desk(practice.PracticeId, account.Id, account.DisplayName, account.Role)
        {
            From = from,
        };
        var note = desk.Note("practice-founded", practice.PracticeId, calendar.Now);
        if (!await practices.FoundFirst(practice, account, note, cancel))
            return new FoundedAlready();
        await door.SignInAsync(account, isPersistent: false);
        return new Founded();
    }
}
