using Practice.Domain.Practices;
using Practice.Service.Desks;
using Practice.Store.Accounts;

namespace Practice.Service.Team;

/// <summary>What became of changing a seat.</summary>
public enum SeatOutcome
{
    /// <summary>It is on file; the member's sessions ended.</summary>
    Changed,

    /// <summary>The practice has no such member.</summary>
    NoSuchMember,

    /// <summary>A practice keeps an owner who can sign in.</summary>
    LastOwner,
}

/// <summary>Gives a member another role.</summary>
public sealed class ChangeRole(TeamStore team, PracticeCalendar calendar)
{
    public async Task<SeatOutcome> Run(
        Desk desk,
        Guid accountId,
        StaffRole role,
        CancellationToken cancel
    )
    {
        NotAllowedException.Unless(desk.MayRunPractice);
        var note = desk.Note("role-changed", accountId, calendar.Now, $"{role}");
        return (SeatOutcome)await team.Change(accountId, a => a.Role = role, note, cancel);
    }
}

/// <summary>Lets a member no longer in, or in again. Nothing she did goes away.</summary>
public sealed class LetIn(TeamStore team, PracticeCalendar calendar)
{
    public async Task<SeatOutcome> Run(
        Desk desk,
        Guid accountId,
        bool mayComeIn,
        CancellationToken cancel
    )
    {
        NotAllowedException.Unless(desk.MayRunPractice);
        var now = calendar.Now;
        var what = mayComeIn ? "member-let-in-again" : "member-deactivated";
        return (SeatOutcome)
            await team.Change(
                accountId,
                a => a.DeactivatedAt = mayComeIn ? null : now,
                desk.Note(what, accountId, now),
                cancel
            );
    }
}
