using System.Collections.Immutable;
using Microsoft.EntityFrameworkCore;
using Practice.Domain.Caseload;
using Practice.Domain.Plans;
using Practice.Domain.Practices;

namespace Practice.Store.Plans;

/// <summary>The plan versions of a practice's races.</summary>
public sealed class PlanStore
{
    private readonly IDbContextFactory<PracticeDb> _contexts;

    internal PlanStore(IDbContextFactory<PracticeDb> contexts) => _contexts = contexts;

    public async Task<OnFile<PlanVersion>?> Find(
        Guid practiceId,
        Guid versionId,
        CancellationToken cancel
    )
    {
        await using var db = _contexts.Open(practiceId);
        return db.OnFileOrNull(
            await db.PlanVersions.SingleOrDefaultAsync(p => p.Id == versionId, cancel)
        );
    }

    /// <summary>The version with the highest number; null before the first.</summary>
    public async Task<OnFile<PlanVersion>?> Latest(
        Guid practiceId,
        Guid raceId,
        CancellationToken cancel
    )
    {
        await using var db = _contexts.Open(practiceId);
        return db.OnFileOrNull(
            await db
                .PlanVersions.Where(p => p.RaceId == raceId)
                .OrderByDescending(p => p.Number)
                .FirstOrDefaultAsync(cancel)
        );
    }

    /// <summary>The version the client holds: the issued one with the highest number; null when none is out.</summary>
    public async Task<PlanVersion?> Issued(Guid practiceId, Guid raceId, CancellationToken cancel)
    {
        await using var db = _contexts.Open(practiceId);
        return await db
            .PlanVersions.Where(p => p.RaceId == raceId && p.Status == PlanStatus.Issued)
            .OrderByDescending(p => p.Number)
            .FirstOrDefaultAsync(cancel);
    }

    /// <summary>The versions of a race without their plans, newest first.</summary>
    public async Task<ImmutableArray<PlanVersionRow>> Versions(
        Guid practiceId,
        Guid raceId,
        CancellationToken cancel
    )
    {
        await using var db = _contexts.Open(practiceId);
        return
        [
            .. await db
                .PlanVersions.Where(p => p.RaceId == raceId)
                .OrderByDescending(p => p.Number)
                .Select(p => new PlanVersionRow(
                    p.Id,
                    p.RaceId,
                    p.Number,
                    p.Status,
                    p.Reason,
                    p.CreatedAt,
                    p.EditedAt,
                    p.IssuedBy,
                    p.IssuedAt
                ))
                .ToListAsync(cancel),
        ];
    }

    /// <summary>The number the race's next version gets.</summary>
    public async Task<int> NextNumber(Guid practiceId, Guid raceId, CancellationToken cancel)
    {
        await using var db = _contexts.Open(practiceId);
        var last = await db
            .PlanVersions.Where(p => p.RaceId == raceId)
            .MaxAsync(p => (int?)p.Number, cancel);
        return (last ?? 0) + 1;
    }

    /// <returns>The version as filed; null when somebody took its number meanwhile.</returns>
    public async Task<OnFile<PlanVersion>?> Add(
        PlanVersion version,
        AuditEntry audit,
        CancellationToken cancel
    )
    {
        try
        {
            return await _contexts.Add(version, audit, cancel);
        }
        catch (DbUpdateException e) when (e.IsOnFileAlready())
        {
            return null;
        }
    }

    public Task<SaveOutcome<PlanVersion>> Save(
        OnFile<PlanVersion> version,
        AuditEntry audit,
        CancellationToken cancel
    ) =>
        _contexts.Save(
            version,
            audit,
            db => db.PlanVersions.Where(p => p.Id == version.Value.Id),
            cancel
        );

    /// <summary>
    /// Files that a version was withdrawn. The plan itself is not written again: it was frozen when it was issued, and the
    /// same plan sealed anew would read as another.
    /// </summary>
    /// <returns>Whether it was filed: false when somebody changed the version meanwhile.</returns>
    public async Task<bool> Withdraw(
        OnFile<PlanVersion> withdrawn,
        AuditEntry audit,
        CancellationToken cancel
    )
    {
        await using var db = _contexts.Open(audit.PracticeId);
        await using var both = await db.Database.BeginTransactionAsync(cancel);
        var (version, status, reason) = (
            withdrawn.Version,
            withdrawn.Value.Status,
            withdrawn.Value.Reason
        );
        var filed = await db
            .PlanVersions.Where(p =>
                p.Id == withdrawn.Value.Id && EF.Property<uint>(p, TenantMapping.Version) == version
            )
            .ExecuteUpdateAsync(
                set => set.SetProperty(p => p.Status, status).SetProperty(p => p.Reason, reason),
                cancel
            );
        if (filed == 0)
            return false;
        db.Add(audit);
        await db.SaveChangesAsync(cancel);
        await both.CommitAsync(cancel);
        return true;
    }
}
