using Microsoft.EntityFrameworkCore;
using NodaTime;
using Practice.Domain.Practices;

namespace Practice.Store.Accounts;

/// <summary>What became of changing a member's seat.</summary>
public enum SeatChange
{
    /// <summary>It is on file, and the member's sessions are ended: she signs in anew with what she may now do.</summary>
    Changed,

    /// <summary>The practice has no such member.</summary>
    NoSuchMember,

    /// <summary>The practice would be left without an owner who can sign in.</summary>
    LastOwner,
}

/// <summary>Roles of a team, and who left it.</summary>
public sealed class TeamStore
{
    private readonly IDbContextFactory<PracticeDb> _contexts;

    internal TeamStore(IDbContextFactory<PracticeDb> contexts) => _contexts = contexts;

    /// <summary>Changes a member's role or whether she may sign in. A practice always keeps an owner.</summary>
    public async Task<SeatChange> Change(
        Guid accountId,
        Action<Account> change,
        AuditEntry audit,
        CancellationToken cancel
    )
    {
        await using var db = _contexts.Open(audit.PracticeId);
        await using var all = await db.Database.BeginTransactionAsync(cancel);
        // two owners who demote each other at once would both be right
        await db.Database.ExecuteSqlAsync(
            $"select pg_advisory_xact_lock(hashtext('team' || {audit.PracticeId}))",
            cancel
        );
        var team = await db.Users.Where(a => a.PracticeId == audit.PracticeId).ToListAsync(cancel);
        if (team.Find(a => a.Id == accountId) is not { } account)
            return SeatChange.NoSuchMember;
        change(account);
        if (!team.Exists(a => a.Role == StaffRole.Owner && a.DeactivatedAt is null))
            return SeatChange.LastOwner;
        db.Add(audit);
        await db.SaveChangesAsync(cancel);
        await db
            .Sessions.Where(s => s.AccountId == accountId && s.EndedAt == null)
            .ExecuteUpdateAsync(set => set.SetProperty(s => s.EndedAt, (Instant?)audit.At), cancel);
        await all.CommitAsync(cancel);
        return SeatChange.Changed;
    }
}
