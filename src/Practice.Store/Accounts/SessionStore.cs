using System.Collections.Immutable;
using Microsoft.EntityFrameworkCore;
using NodaTime;
using Practice.Domain.Practices;

namespace Practice.Store.Accounts;

/// <summary>Who is signed in where. A session that ended never begins again.</summary>
public sealed class SessionStore
{
    private readonly IDbContextFactory<PracticeDb> _contexts;

    internal SessionStore(IDbContextFactory<PracticeDb> contexts) => _contexts = contexts;

    public async Task Begin(SignInSession session, CancellationToken cancel)
    {
        await using var db = _contexts.Open(session.PracticeId);
        db.Add(session);
        await db.SaveChangesAsync(cancel);
    }

    /// <summary>A session that still lasts; null when it ended or never was.</summary>
    public async Task<SignInSession?> Lasting(
        Guid practiceId,
        Guid sessionId,
        CancellationToken cancel
    )
    {
        await using var db = _contexts.Open(practiceId);
        return await db
            .Sessions.AsNoTracking()
            .SingleOrDefaultAsync(s => s.Id == sessionId && s.EndedAt == null, cancel);
    }

    public async Task Seen(SignInSession session, Instant now, CancellationToken cancel)
    {
        await using var db = _contexts.Open(session.PracticeId);
        await db
            .Sessions.Where(s => s.Id == session.Id)
            .ExecuteUpdateAsync(set => set.SetProperty(s => s.SeenAt, now), cancel);
    }

    /// <summary>A member's sessions that last, the latest seen first.</summary>
    public async Task<ImmutableArray<SignInSession>> Of(
        Guid practiceId,
        Guid accountId,
        Instant since,
        CancellationToken cancel
    )
    {
        await using var db = _contexts.Open(practiceId);
        return
        [
            .. await db
                .Sessions.AsNoTracking()
                .Where(s => s.AccountId == accountId && s.EndedAt == null && s.SeenAt > since)
                .OrderByDescending(s => s.SeenAt)
                .ToListAsync(cancel),
        ];
    }

    /// <summary>Ends one session of a member.</summary>
    /// <returns>Whether there was one to end.</returns>
    public async Task<bool> End(
        Guid practiceId,
        Guid accountId,
        Guid sessionId,
        Instant now,
        CancellationToken cancel
    )
    {
        await using var db = _contexts.Open(practiceId);
        return await db
                .Sessions.Where(s =>
                    s.Id == sessionId && s.AccountId == accountId && s.EndedAt == null
                )
                .ExecuteUpdateAsync(set => set.SetProperty(s => s.EndedAt, now), cancel) > 0;
    }

    /// <summary>Ends all sessions of a member but the one that is kept.</summary>
    public async Task EndOthers(
        Guid practiceId,
        Guid accountId,
        Guid? kept,
        Instant now,
        CancellationToken cancel
    )
    {
        await using var db = _contexts.Open(practiceId);
        await db
            .Sessions.Where(s => s.AccountId == accountId && s.EndedAt == null && s.Id != kept)
            .ExecuteUpdateAsync(set => set.SetProperty(s => s.EndedAt, now), cancel);
    }
}
