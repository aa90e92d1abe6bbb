using System.Collections.Immutable;
using Microsoft.EntityFrameworkCore;
using NodaTime;
using Practice.Domain.Caseload;
using Practice.Domain.Practices;

namespace Practice.Store.Portal;

/// <summary>The links that clients hold.</summary>
public sealed class PhoneLinkStore
{
    private readonly IDbContextFactory<PracticeDb> _contexts;

    internal PhoneLinkStore(IDbContextFactory<PracticeDb> contexts) => _contexts = contexts;

    /// <summary>
    /// The link of a fingerprint, whichever practice gave it. Nobody's practice is known yet: row security shows the
    /// one row whose fingerprint was said at the door, and no other.
    /// </summary>
    public async Task<PhoneLink?> AtTheDoor(string fingerprint, CancellationToken cancel)
    {
        await using var db = _contexts.CreateDbContext();
        db.AtTheDoor = fingerprint;
        return await db
            .PhoneLinks.IgnoreQueryFilters()
            .AsNoTracking()
            .SingleOrDefaultAsync(l => l.Fingerprint == fingerprint, cancel);
    }

    public async Task<OnFile<PhoneLink>?> Find(
        Guid practiceId,
        Guid linkId,
        CancellationToken cancel
    )
    {
        await using var db = _contexts.Open(practiceId);
        return db.OnFileOrNull(
            await db.PhoneLinks.SingleOrDefaultAsync(l => l.Id == linkId, cancel)
        );
    }

    /// <summary>Links of a race, newest first.</summary>
    public async Task<ImmutableArray<PhoneLink>> OfRace(
        Guid practiceId,
        Guid raceId,
        CancellationToken cancel
    )
    {
        await using var db = _contexts.Open(practiceId);
        return
        [
            .. await db
                .PhoneLinks.Where(l => l.RaceId == raceId)
                .OrderByDescending(l => l.Id)
                .AsNoTracking()
                .ToListAsync(cancel),
        ];
    }

    public Task<OnFile<PhoneLink>> Add(
        PhoneLink link,
        AuditEntry audit,
        CancellationToken cancel
    ) => _contexts.Add(link, audit, cancel);

    public Task<SaveOutcome<PhoneLink>> Save(
        OnFile<PhoneLink> link,
        AuditEntry audit,
        CancellationToken cancel
    ) => _contexts.Save(link, audit, db => db.PhoneLinks.Where(l => l.Id == link.Value.Id), cancel);

    /// <summary>
    /// Counts an opening. Openings pass each other and anybody's change of the link: it is one statement that adds one.
    /// </summary>
    /// <param name="link">The link opened.</param>
    /// <param name="at">When.</param>
    /// <param name="firstTime">Line of audit for the first opening, written by whoever comes first.</param>
    /// <param name="cancel">Cancels.</param>
    public async Task Count(
        PhoneLink link,
        Instant at,
        AuditEntry firstTime,
        CancellationToken cancel
    )
    {
        await using var db = _contexts.Open(link.PracticeId);
        var same = db.PhoneLinks.Where(l => l.Id == link.Id);
        await using var both = await db.Database.BeginTransactionAsync(cancel);
        var isFirst =
            link.FirstUsedAt is null
            && await same.Where(l => l.FirstUsedAt == null)
                .ExecuteUpdateAsync(set => set.SetProperty(l => l.FirstUsedAt, at), cancel) == 1;
        await same.ExecuteUpdateAsync(
            set => set.SetProperty(l => l.LastUsedAt, at).SetProperty(l => l.Uses, l => l.Uses + 1),
            cancel
        );
        if (isFirst)
        {
            db.Add(firstTime);
            await db.SaveChangesAsync(cancel);
        }
        await both.CommitAsync(cancel);
    }
}
