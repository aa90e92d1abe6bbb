using System.Collections.Immutable;
using Microsoft.EntityFrameworkCore;
using Npgsql;
using Practice.Domain.Caseload;
using Practice.Domain.Practices;
using Practice.Store.Accounts;

namespace Practice.Store.Practices;

/// <summary>The practices that live here, each seen only by itself.</summary>
public sealed class PracticeStore
{
    private readonly IDbContextFactory<PracticeDb> _contexts;
    private readonly NpgsqlDataSource _source;

    internal PracticeStore(IDbContextFactory<PracticeDb> contexts, NpgsqlDataSource source) =>
        (_contexts, _source) = (contexts, source);

    public async Task<OnFile<PracticeProfile>?> Find(Guid practiceId, CancellationToken cancel)
    {
        await using var db = _contexts.Open(practiceId);
        return db.OnFileOrNull(await db.Practices.SingleOrDefaultAsync(cancel));
    }

    /// <summary>Whether any practice lives here; a fresh installation has none.</summary>
    public async Task<bool> AnyYet(CancellationToken cancel)
    {
        // the first page waits for this, and need not wait for EF's model
        await using var question = _source.CreateCommand(
            "select exists (select from registered_practice)"
        );
        return await question.ExecuteScalarAsync(cancel) is true;
    }

    /// <summary>Keys of all practices, oldest first: for work that goes through them one by one.</summary>
    public async Task<ImmutableArray<Guid>> All(CancellationToken cancel)
    {
        await using var db = _contexts.CreateDbContext();
        return [.. await db.Register.OrderBy(r => r.Id).Select(r => r.Id).ToListAsync(cancel)];
    }

    public async Task<OnFile<PracticeProfile>> Found(
        PracticeProfile practice,
        AuditEntry audit,
        CancellationToken cancel
    )
    {
        await using var db = _contexts.Open(practice.PracticeId);
        db.AddRange(practice, new RegisteredPractice(practice.PracticeId), audit);
        await db.SaveChangesAsync(cancel);
        return db.OnFile(practice);
    }

    /// <summary>Founds the first practice of the installation with its owner; of several who try at once one succeeds.</summary>
    /// <returns>Whether it was founded: false when there is one already.</returns>
    public async Task<bool> FoundFirst(
        PracticeProfile practice,
        Account owner,
        AuditEntry audit,
        CancellationToken cancel
    )
    {
        await using var db = _contexts.Open(practice.PracticeId);
        await using var all = await db.Database.BeginTransactionAsync(cancel);
        await db.Database.ExecuteSqlAsync(
            $"select pg_advisory_xact_lock(hashtext('practice.founding'))",
            cancel
        );
        if (await db.Register.AnyAsync(cancel))
            return false;
        db.AddRange(practice, new RegisteredPractice(practice.PracticeId), owner, audit);
        await db.SaveChangesAsync(cancel);
        await all.CommitAsync(cancel);
        return true;
    }

    public Task<SaveOutcome<PracticeProfile>> Save(
        OnFile<PracticeProfile> practice,
        AuditEntry audit,
        CancellationToken cancel
    ) => _contexts.Save(practice, audit, db => db.Practices, cancel);

    /// <summary>Everybody who can sign in for the practice, by name.</summary>
    public async Task<ImmutableArray<TeamMember>> Team(Guid practiceId, CancellationToken cancel)
    {
        await using var db = _contexts.Open(practiceId);
        return
        [
            .. await db
                .Users.Where(a => a.PracticeId == practiceId)
                .OrderBy(a => a.DisplayName)
                .Select(a => new TeamMember(a.Id, a.DisplayName, a.Email ?? "", a.Role)
                {
                    IsActive = a.DeactivatedAt == null,
                })
                .ToListAsync(cancel),
        ];
    }
}
