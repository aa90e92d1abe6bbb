using System.Collections.Immutable;
using Microsoft.EntityFrameworkCore;
using Practice.Domain.Caseload;
using Practice.Domain.Debriefs;
using Practice.Domain.Practices;

namespace Practice.Store.Debriefs;

/// <summary>What was learned from the races of a practice.</summary>
public sealed class DebriefStore
{
    private readonly IDbContextFactory<PracticeDb> _contexts;

    internal DebriefStore(IDbContextFactory<PracticeDb> contexts) => _contexts = contexts;

    /// <summary>The debrief of a race; null before it is written.</summary>
    public async Task<OnFile<Debrief>?> Find(Guid practiceId, Guid raceId, CancellationToken cancel)
    {
        await using var db = _contexts.Open(practiceId);
        return db.OnFileOrNull(
            await db.Debriefs.SingleOrDefaultAsync(d => d.RaceId == raceId, cancel)
        );
    }

    /// <summary>The debriefs of a client's races.</summary>
    public async Task<ImmutableArray<Debrief>> OfClient(
        Guid practiceId,
        Guid clientId,
        CancellationToken cancel
    )
    {
        await using var db = _contexts.Open(practiceId);
        return [.. await db.Debriefs.Where(d => d.ClientId == clientId).ToListAsync(cancel)];
    }

    /// <summary>Which of some races were talked about.</summary>
    public async Task<ImmutableHashSet<Guid>> Among(
        Guid practiceId,
        IReadOnlyCollection<Guid> races,
        CancellationToken cancel
    )
    {
        await using var db = _contexts.Open(practiceId);
        return
        [
            .. await db
                .Debriefs.Where(d => races.Contains(d.RaceId))
                .Select(d => d.RaceId)
                .ToListAsync(cancel),
        ];
    }

    public Task<OnFile<Debrief>> Add(Debrief debrief, AuditEntry audit, CancellationToken cancel) =>
        _contexts.Add(debrief, audit, cancel);

    public Task<SaveOutcome<Debrief>> Save(
        OnFile<Debrief> debrief,
        AuditEntry audit,
        CancellationToken cancel
    ) =>
        _contexts.Save(
            debrief,
            audit,
            db => db.Debriefs.Where(d => d.RaceId == debrief.Value.RaceId),
            cancel
        );
}
