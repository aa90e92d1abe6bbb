using System.Collections.Immutable;
using Microsoft.EntityFrameworkCore;
using Practice.Domain.Caseload;
using Practice.Domain.Plans;
using Practice.Domain.Practices;
using Practice.Domain.Rehearsals;

namespace Practice.Store.Rehearsals;

/// <summary>The rehearsals of a practice's clients.</summary>
public sealed class RehearsalStore
{
    private readonly IDbContextFactory<PracticeDb> _contexts;

    internal RehearsalStore(IDbContextFactory<PracticeDb> contexts) => _contexts = contexts;

    /// <summary>A rehearsal by its key.</summary>
    public async Task<OnFile<Rehearsal>?> Find(
        Guid practiceId,
        Guid rehearsalId,
        CancellationToken cancel
    )
    {
        await using var db = _contexts.Open(practiceId);
        return db.OnFileOrNull(
            await db.Rehearsals.SingleOrDefaultAsync(r => r.Id == rehearsalId, cancel)
        );
    }

    public Task<OnFile<Rehearsal>> Add(
        Rehearsal rehearsal,
        AuditEntry audit,
        CancellationToken cancel
    ) => _contexts.Add(rehearsal, audit, cancel);

    public Task<SaveOutcome<Rehearsal>> Save(
        OnFile<Rehearsal> rehearsal,
        AuditEntry audit,
        CancellationToken cancel
    ) =>
        _contexts.Save(
            rehearsal,
            audit,
            db => db.Rehearsals.Where(r => r.Id == rehearsal.Value.Id),
            cancel
        );

    /// <summary>Keeps a review together with the plan version that came of it: both or none.</summary>
    public Task<SaveOutcome<Rehearsal>> Save(
        OnFile<Rehearsal> rehearsal,
        AuditEntry audit,
        PlanVersion next,
        AuditEntry begun,
        CancellationToken cancel
    ) =>
        _contexts.Save(
            rehearsal,
            audit,
            db => db.Rehearsals.Where(r => r.Id == rehearsal.Value.Id),
            cancel,
            next,
            begun
        );

    /// <summary>Rehearsals for one race, earliest first, cancelled ones included.</summary>
    public async Task<ImmutableArray<Rehearsal>> OfRace(
        Guid practiceId,
        Guid raceId,
        CancellationToken cancel
    )
    {
        await using var db = _contexts.Open(practiceId);
        return [.. await InOrder(db.Rehearsals.Where(r => r.RaceId == raceId)).ToListAsync(cancel)];
    }

    /// <summary>Rehearsals of one client for whatever race, earliest first, cancelled ones included.</summary>
    public async Task<ImmutableArray<Rehearsal>> OfClient(
        Guid practiceId,
        Guid clientId,
        CancellationToken cancel
    )
    {
        await using var db = _contexts.Open(practiceId);
        return
        [
            .. await InOrder(db.Rehearsals.Where(r => r.ClientId == clientId)).ToListAsync(cancel),
        ];
    }

    /// <summary>Rehearsals for some races in brief, earliest first, cancelled ones left out.</summary>
    public async Task<ImmutableArray<RehearsalRow>> OfRaces(
        Guid practiceId,
        IReadOnlyCollection<Guid> raceIds,
        CancellationToken cancel
    )
    {
        await using var db = _contexts.Open(practiceId);
        return
        [
            .. await Rows(db.Rehearsals.Where(r => raceIds.Contains(r.RaceId))).ToListAsync(cancel),
        ];
    }

    /// <summary>Every rehearsal of the caseload that was told of and not yet reviewed, or that told of a warning sign.</summary>
    public async Task<ImmutableArray<RehearsalRow>> ToRead(
        Guid practiceId,
        CancellationToken cancel
    )
    {
        await using var db = _contexts.Open(practiceId);
        var toRead = db.Rehearsals.Where(r =>
            r.Status == RehearsalStatus.FedBack || EF.Property<bool>(r, RehearsalMapping.Warns)
        );
        return [.. await Rows(toRead).ToListAsync(cancel)];
    }

    /// <summary>Rehearsals in which a client told of a warning sign, earliest first.</summary>
    public async Task<ImmutableArray<Rehearsal>> WithWarningSigns(
        Guid practiceId,
        IReadOnlyCollection<Guid> clientIds,
        CancellationToken cancel
    )
    {
        await using var db = _contexts.Open(practiceId);
        var warning = db.Rehearsals.Where(r =>
            clientIds.Contains(r.ClientId) && EF.Property<bool>(r, RehearsalMapping.Warns)
        );
        return [.. await InOrder(warning).ToListAsync(cancel)];
    }

    private static IQueryable<Rehearsal> InOrder(IQueryable<Rehearsal> rehearsals) =>
        rehearsals.OrderBy(r => r.RunOn).ThenBy(r => r.Id);

    private static IQueryable<RehearsalRow> Rows(IQueryable<Rehearsal> rehearsals) =>
        InOrder(rehearsals.Where(r => r.Status != RehearsalStatus.Cancelled))
            .Select(r => new RehearsalRow(
                r.Id,
                r.RaceId,
                r.ClientId,
                EF.Property<RehearsalKind>(r, RehearsalMapping.Kind),
                r.RunOn,
                r.Status,
                EF.Property<bool>(r, RehearsalMapping.Warns)
            ));
}
