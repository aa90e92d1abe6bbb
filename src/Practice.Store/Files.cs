using Microsoft.EntityFrameworkCore;
using Npgsql;
using Practice.Domain.Caseload;
using Practice.Domain.Practices;

namespace Practice.Store;

/// <summary>What the store classes share: one context an operation, and each change saved with its line of audit.</summary>
internal static class Files
{
    public static PracticeDb Open(this IDbContextFactory<PracticeDb> contexts, Guid practiceId)
    {
        var db = contexts.CreateDbContext();
        db.Practice = practiceId;
        return db;
    }

    public static OnFile<T> OnFile<T>(this PracticeDb db, T value)
        where T : class =>
        new(value, db.Entry(value).Property<uint>(TenantMapping.Version).CurrentValue);

    public static OnFile<T>? OnFileOrNull<T>(this PracticeDb db, T? value)
        where T : class => value is null ? null : db.OnFile(value);

    public static async Task<OnFile<T>> Add<T>(
        this IDbContextFactory<PracticeDb> contexts,
        T value,
        AuditEntry audit,
        CancellationToken cancel
    )
        where T : class
    {
        await using var db = contexts.Open(audit.PracticeId);
        db.Add(value);
        db.Add(audit);
        await db.SaveChangesAsync(cancel);
        return db.OnFile(value);
    }

    public static async Task<SaveOutcome<T>> Save<T>(
        this IDbContextFactory<PracticeDb> contexts,
        OnFile<T> held,
        AuditEntry audit,
        Func<PracticeDb, IQueryable<T>> same,
        CancellationToken cancel,
        params object[] added
    )
        where T : class
    {
        await using (var db = contexts.Open(audit.PracticeId))
        {
            var entry = db.Update(held.Value);
            entry.Property<uint>(TenantMapping.Version).OriginalValue = held.Version;
            db.Add(audit);
            db.AddRange(added);
            try
            {
                await db.SaveChangesAsync(cancel);
                return new Saved<T>(db.OnFile(held.Value));
            }
            catch (DbUpdateConcurrencyException) { }
        }

        await using var now = contexts.Open(audit.PracticeId);
        return new Conflict<T>(now.OnFileOrNull(await same(now).SingleOrDefaultAsync(cancel)));
    }

    /// <summary>Whether a save failed because the same is on file already.</summary>
    public static bool IsOnFileAlready(this DbUpdateException failure) =>
        failure.InnerException
            is PostgresException { SqlState: PostgresErrorCodes.UniqueViolation };
}
