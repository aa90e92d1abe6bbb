using System.Collections.Immutable;
using Microsoft.EntityFrameworkCore;
using NodaTime;
using Practice.Domain.Practices;
using Practice.Store.Mail;

namespace Practice.Store.Accounts;

/// <summary>Seats offered in teams.</summary>
public sealed class InvitationStore
{
    private readonly IDbContextFactory<PracticeDb> _contexts;

    internal InvitationStore(IDbContextFactory<PracticeDb> contexts) => _contexts = contexts;

    /// <summary>Files an offer with its letter; an earlier offer to the same address lapses.</summary>
    public async Task Offer(
        Invitation invitation,
        Letter letter,
        AuditEntry audit,
        CancellationToken cancel
    )
    {
        await using var db = _contexts.Open(invitation.PracticeId);
        foreach (var earlier in await Open(db, invitation.InvitedAt).ToListAsync(cancel))
            if (string.Equals(earlier.Email, invitation.Email, StringComparison.OrdinalIgnoreCase))
                earlier.Withdraw(invitation.InvitedAt);
        db.Add(invitation);
        db.Post(letter);
        db.Add(audit);
        await db.SaveChangesAsync(cancel);
    }

    /// <summary>Offers that still stand, the latest first.</summary>
    public async Task<ImmutableArray<Invitation>> Standing(
        Guid practiceId,
        Instant now,
        CancellationToken cancel
    )
    {
        await using var db = _contexts.Open(practiceId);
        return
        [
            .. await Open(db, now).AsNoTracking().OrderByDescending(i => i.Id).ToListAsync(cancel),
        ];
    }

    /// <summary>The offer whose secret somebody brings, of whichever practice.</summary>
    public async Task<Invitation?> AtTheDoor(string secretHash, CancellationToken cancel)
    {
        await using var db = _contexts.CreateDbContext();
        db.AtTheDoor = secretHash;
        return await db
            .Invitations.AsNoTracking()
            .SingleOrDefaultAsync(i => i.SecretHash == secretHash, cancel);
    }

    /// <summary>Takes an offer back.</summary>
    /// <returns>Whether there was one that stood.</returns>
    public async Task<bool> Withdraw(Guid invitationId, AuditEntry audit, CancellationToken cancel)
    {
        await using var db = _contexts.Open(audit.PracticeId);
        var found = await Open(db, audit.At)
            .SingleOrDefaultAsync(i => i.Id == invitationId, cancel);
        if (found is null)
            return false;
        found.Withdraw(audit.At);
        db.Add(audit);
        await db.SaveChangesAsync(cancel);
        return true;
    }

    /// <summary>Closes the offer and files the account in one: of two who use the same link one succeeds.</summary>
    public async Task<bool> Accept(
        Invitation invitation,
        Account account,
        AuditEntry audit,
        CancellationToken cancel
    )
    {
        await using var db = _contexts.Open(invitation.PracticeId);
        var found = await Open(db, audit.At)
            .SingleOrDefaultAsync(i => i.Id == invitation.Id, cancel);
        if (found is null)
            return false;
        found.Accept(audit.At);
        db.AddRange(account, audit);
        try
        {
            await db.SaveChangesAsync(cancel);
            return true;
        }
        catch (DbUpdateException)
        {
            // somebody else took the seat, or the address, a moment ago
            return false;
        }
    }

    private static IQueryable<Invitation> Open(PracticeDb db, Instant now) =>
        db.Invitations.Where(i =>
            i.PracticeId == db.Practice && i.ClosedAt == null && i.ExpiresAt > now
        );
}
