using System.Collections.Immutable;
using Microsoft.EntityFrameworkCore;
using Practice.Domain.Practices;

namespace Practice.Store.Audit;

/// <summary>Who did what. Entries are added and read; the application has no right to change or remove one.</summary>
public sealed class AuditLog
{
    private readonly IDbContextFactory<PracticeDb> _contexts;

    internal AuditLog(IDbContextFactory<PracticeDb> contexts) => _contexts = contexts;

    /// <summary>Notes what changed nothing on file, such as a sign-in or a printed paper.</summary>
    public async Task Note(AuditEntry entry, CancellationToken cancel)
    {
        await using var db = _contexts.Open(entry.PracticeId);
        db.Add(entry);
        await db.SaveChangesAsync(cancel);
    }

    /// <summary>The latest entries first; only those about one client, race or plan where one is given.</summary>
    public async Task<ImmutableArray<AuditEntry>> Latest(
        Guid practiceId,
        Guid? about,
        int take,
        CancellationToken cancel
    )
    {
        await using var db = _contexts.Open(practiceId);
        return
        [
            .. await db
                .Audit.Where(a => about == null || a.About == about)
                .OrderByDescending(a => a.Id)
                .Take(take)
                .AsNoTracking()
                .ToListAsync(cancel),
        ];
    }
}
