using System.Collections.Immutable;
using Microsoft.EntityFrameworkCore;
using NodaTime;
using Practice.Domain.Caseload;
using Practice.Domain.Practices;

namespace Practice.Store.Audit;

/// <summary>Which lines of audit; null asks for all.</summary>
public sealed record AuditFilter(
    Guid? AccountId,
    string? What,
    Guid? About,
    Instant? From,
    Instant? Before
);

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

    /// <summary>Lines that fit with the health facts that changed, the latest first.</summary>
    public async Task<ImmutableArray<AuditEntry>> Search(
        Guid practiceId,
        AuditFilter filter,
        int skip,
        int take,
        CancellationToken cancel
    )
    {
        await using var db = _contexts.Open(practiceId);
        var lines = db.Audit.AsNoTracking();
        if (filter.AccountId is { } account)
            lines = lines.Where(a => a.AccountId == account);
        if (filter.What is { } what)
            lines = lines.Where(a => a.What == what);
        if (filter.About is { } about)
            lines = lines.Where(a => a.About == about);
        if (filter.From is { } from)
            lines = lines.Where(a => a.At >= from);
        if (filter.Before is { } before)
            lines = lines.Where(a => a.At < before);
        return
        [
            .. await lines
                .Include(a => a.Changes)
                .OrderByDescending(a => a.Id)
                .Skip(skip)
                .Take(take)
                .ToListAsync(cancel),
        ];
    }

    /// <summary>What the lines are about, by key.</summary>
    public async Task<ImmutableDictionary<Guid, AuditSubject>> Subjects(
        Guid practiceId,
        IEnumerable<AuditEntry> lines,
        CancellationToken cancel
    )
    {
        await using var db = _contexts.Open(practiceId);
        return await db.Subjects(lines.Select(l => l.About).OfType<Guid>().ToHashSet(), cancel);
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
