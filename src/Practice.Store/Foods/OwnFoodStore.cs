using System.Collections.Immutable;
using Microsoft.EntityFrameworkCore;
using Npgsql;
using Practice.Domain.Caseload;
using Practice.Domain.Foods.Own;
using Practice.Domain.Practices;

namespace Practice.Store.Foods;

/// <summary>The foods that a practice wrote down itself, and its measures for foods of the library.</summary>
public sealed class OwnFoodStore
{
    private readonly IDbContextFactory<PracticeDb> _contexts;

    internal OwnFoodStore(IDbContextFactory<PracticeDb> contexts) => _contexts = contexts;

    /// <summary>All foods, retired ones included, by name.</summary>
    public async Task<ImmutableArray<OnFile<OwnFood>>> All(
        Guid practiceId,
        CancellationToken cancel
    )
    {
        await using var db = _contexts.Open(practiceId);
        var foods = await db.OwnFoods.OrderBy(f => f.NameKey).ThenBy(f => f.Id).ToListAsync(cancel);
        return [.. foods.Select(db.OnFile)];
    }

    /// <summary>One food; null when the practice has no such.</summary>
    public async Task<OnFile<OwnFood>?> Find(Guid practiceId, Guid foodId, CancellationToken cancel)
    {
        await using var db = _contexts.Open(practiceId);
        return db.OnFileOrNull(await db.OwnFoods.SingleOrDefaultAsync(f => f.Id == foodId, cancel));
    }

    /// <summary>Names of the foods in use, as two must not share them.</summary>
    public async Task<ImmutableHashSet<string>> NamesInUse(
        Guid practiceId,
        CancellationToken cancel
    )
    {
        await using var db = _contexts.Open(practiceId);
        return
        [
            .. await db
                .OwnFoods.Where(f => f.RetiredAt == null)
                .Select(f => f.NameKey)
                .ToListAsync(cancel),
        ];
    }

    /// <summary>All of them or none.</summary>
    /// <returns>Whether they are on file; false when a name is taken.</returns>
    public Task<bool> Add(
        IEnumerable<OwnFood> foods,
        ImmutableArray<AuditEntry> audits,
        CancellationToken cancel
    ) =>
        UnlessTaken(async () =>
        {
            await using var db = _contexts.Open(audits[0].PracticeId);
            db.AddRange(foods);
            db.AddRange(audits);
            await db.SaveChangesAsync(cancel);
        });

    /// <returns>What became of it; null when another food in use has the name.</returns>
    public async Task<SaveOutcome<OwnFood>?> Save(
        OnFile<OwnFood> food,
        AuditEntry audit,
        CancellationToken cancel
    )
    {
        SaveOutcome<OwnFood>? outcome = null;
        await UnlessTaken(async () =>
            outcome = await _contexts.Save(
                food,
                audit,
                db => db.OwnFoods.Where(f => f.Id == food.Value.Id),
                cancel
            )
        );
        return outcome;
    }

    /// <summary>The measures that the practice added to foods of the library.</summary>
    public async Task<ImmutableArray<OwnMeasure>> Measures(
        Guid practiceId,
        CancellationToken cancel
    )
    {
        await using var db = _contexts.Open(practiceId);
        return
        [
            .. await db
                .OwnMeasures.AsNoTracking()
                .OrderBy(m => m.FoodId)
                .ThenBy(m => m.Name)
                .ToListAsync(cancel),
        ];
    }

    /// <returns>Whether it is on file; false when the food has a measure of that name.</returns>
    public Task<bool> Add(OwnMeasure measure, AuditEntry audit, CancellationToken cancel) =>
        UnlessTaken(() => _contexts.Add(measure, audit, cancel));

    /// <summary>Takes a measure away; what was planned with it keeps it.</summary>
    public async Task Remove(Guid measureId, AuditEntry audit, CancellationToken cancel)
    {
        await using var db = _contexts.Open(audit.PracticeId);
        if (await db.OwnMeasures.SingleOrDefaultAsync(m => m.Id == measureId, cancel) is not { } m)
            return;
        db.Remove(m);
        db.Add(audit);
        await db.SaveChangesAsync(cancel);
    }

    private static async Task<bool> UnlessTaken(Func<Task> write)
    {
        try
        {
            await write();
            return true;
        }
        catch (DbUpdateException e)
            when (e.InnerException
                    is PostgresException { SqlState: PostgresErrorCodes.UniqueViolation }
            )
        {
            return false;
        }
    }
}
