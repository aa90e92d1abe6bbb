using System.Collections.Immutable;
using Microsoft.EntityFrameworkCore;
using Practice.Domain.Caseload;
using Practice.Domain.Practices;
using Practice.Domain.Screening;

namespace Practice.Store.Screening;

/// <summary>The screenings of a practice's clients, one a client.</summary>
public sealed class ScreeningStore
{
    private readonly IDbContextFactory<PracticeDb> _contexts;

    internal ScreeningStore(IDbContextFactory<PracticeDb> contexts) => _contexts = contexts;

    /// <summary>The client's screening; null before the first.</summary>
    public async Task<OnFile<ScreeningRecord>?> Of(
        Guid practiceId,
        Guid clientId,
        CancellationToken cancel
    )
    {
        await using var db = _contexts.Open(practiceId);
        return db.OnFileOrNull(
            await db.Screenings.SingleOrDefaultAsync(s => s.ClientId == clientId, cancel)
        );
    }

    /// <summary>Screenings by client; clients without one are not in it.</summary>
    public async Task<ImmutableDictionary<Guid, ScreeningRecord>> OfSeveral(
        Guid practiceId,
        IReadOnlyCollection<Guid> clientIds,
        CancellationToken cancel
    )
    {
        await using var db = _contexts.Open(practiceId);
        var found = await db
            .Screenings.Where(s => clientIds.Contains(s.ClientId))
            .ToListAsync(cancel);
        return found.ToImmutableDictionary(s => s.ClientId);
    }

    public Task<OnFile<ScreeningRecord>> Add(
        ScreeningRecord screening,
        AuditEntry audit,
        CancellationToken cancel
    ) => _contexts.Add(screening, audit, cancel);

    public Task<SaveOutcome<ScreeningRecord>> Save(
        OnFile<ScreeningRecord> screening,
        AuditEntry audit,
        CancellationToken cancel
    ) =>
        _contexts.Save(
            screening,
            audit,
            db => db.Screenings.Where(s => s.Id == screening.Value.Id),
            cancel
        );
}
