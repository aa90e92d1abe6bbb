using System.Collections.Immutable;
using Microsoft.EntityFrameworkCore;
using NodaTime;
using Practice.Domain.Caseload;
using Practice.Domain.Practices;
using Practice.Domain.Races;

namespace Practice.Store.Races;

/// <summary>The races that clients of a practice head for.</summary>
public sealed class RaceStore
{
    private readonly IDbContextFactory<PracticeDb> _contexts;

    internal RaceStore(IDbContextFactory<PracticeDb> contexts) => _contexts = contexts;

    /// <summary>A race by its key.</summary>
    public async Task<OnFile<Race>?> Find(Guid practiceId, Guid raceId, CancellationToken cancel)
    {
        await using var db = _contexts.Open(practiceId);
        return db.OnFileOrNull(await db.Races.SingleOrDefaultAsync(r => r.Id == raceId, cancel));
    }

    public Task<OnFile<Race>> Add(Race race, AuditEntry audit, CancellationToken cancel) =>
        _contexts.Add(race, audit, cancel);

    public Task<SaveOutcome<Race>> Save(
        OnFile<Race> race,
        AuditEntry audit,
        CancellationToken cancel
    ) => _contexts.Save(race, audit, db => db.Races.Where(r => r.Id == race.Value.Id), cancel);

    /// <summary>Races of one client, earliest first.</summary>
    public async Task<ImmutableArray<RaceRow>> OfClient(
        Guid practiceId,
        Guid clientId,
        CancellationToken cancel
    )
    {
        await using var db = _contexts.Open(practiceId);
        return [.. await db.Rows(db.Races.Where(r => r.ClientId == clientId)).ToListAsync(cancel)];
    }

    /// <summary>Some races, earliest first.</summary>
    public async Task<ImmutableArray<RaceRow>> OfSeveral(
        Guid practiceId,
        IReadOnlyCollection<Guid> raceIds,
        CancellationToken cancel
    )
    {
        await using var db = _contexts.Open(practiceId);
        return [.. await db.Rows(db.Races.Where(r => raceIds.Contains(r.Id))).ToListAsync(cancel)];
    }

    /// <summary>Races of the caseload that start from the first to the last day, both included, earliest first.</summary>
    public async Task<ImmutableArray<RaceRow>> Between(
        Guid practiceId,
        LocalDate first,
        LocalDate last,
        CancellationToken cancel
    )
    {
        await using var db = _contexts.Open(practiceId);
        var (from, before) = (first.AtMidnight(), last.PlusDays(1).AtMidnight());
        return
        [
            .. await db.Rows(db.Races.Where(r => r.Start >= from && r.Start < before))
                .ToListAsync(cancel),
        ];
    }
}
