using Microsoft.AspNetCore.Identity;
using Practice.Domain.Practices;
using Practice.Service.Accounts;
using Practice.Service.Desks;
using Practice.Store.Accounts;
using Practice.Store.Practices;

namespace Practice.Service.Team;

/// <summary>What somebody with a link is offered.</summary>
/// <param name="Practice">Name of the practice.</param>
/// <param name="Email">The address the offer went to.</param>
/// <param name="Role">What the member will be allowed.</param>
/// <param name="By">Who invited.</param>
public sealed record SeatOffer(string Practice, string Email, StaffRole Role, string By);

/// <summary>What became of taking a seat.</summary>
public abstract record AcceptOutcome;

/// <summary>The account is on file, and its owner signed in.</summary>
public sealed record Accepted : AcceptOutcome;

/// <summary>The link leads nowhere: used, taken back, lapsed or never given.</summary>
public sealed record NoSuchSeat : AcceptOutcome;

/// <summary>The account cannot be made so.</summary>
/// <param name="Why">What to change.</param>
public sealed record AccountRefused(string Why) : AcceptOutcome;

/// <summary>Lets somebody who has an invitation's link take the seat.</summary>
public sealed class AcceptInvitation(
    InvitationStore invitations,
    PracticeStore practices,
    NewAccounts accounts,
    SignInManager<Account> door,
    PracticeCalendar calendar
)
{
    /// <returns>The offer; null where the link leads nowhere.</returns>
    public async Task<SeatOffer?> Find(string secret, CancellationToken cancel) =>
        await Open(secret, cancel) is { } seat
        && await practices.Find(seat.PracticeId, cancel) is { Value: var practice }
            ? new SeatOffer(practice.Name, seat.Email, seat.Role, seat.InvitedBy)
            : null;

    public async Task<AcceptOutcome> Run(
        string secret,
        string name,
        string password,
        string from,
        CancellationToken cancel
    )
    {
        if (await Open(secret, cancel) is not { } seat)
            return new NoSuchSeat();
        var (account, refusal) = await accounts.Prepare(
            seat.PracticeId,
            new NewMember(name, seat.Email, password),
            seat.Role
        );
        if (account is null)
            return new AccountRefused(refusal);
        var desk = new Desk(seat.PracticeId, account.Id, account.DisplayName, account.Role)
        {
            From = from,
        };
        var note = desk.Note("invitation-accepted", seat.Id, calendar.Now);
        if (!await invitations.Accept(seat, account, note, cancel))
            return new NoSuchSeat();
        await door.SignInAsync(account, isPersistent: false);
        return new Accepted();
    }

    private async Task<Invitation?> Open(string secret, CancellationToken cancel) =>
        await invitations.AtTheDoor(Secret.Hash(secret), cancel) is { } seat
        && seat.IsOpen(calendar.Now)
            ? seat
            : null;
}
