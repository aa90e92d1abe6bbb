using Microsoft.EntityFrameworkCore;
using Practice.Domain.Practices;

namespace Practice.Store.Mail;

/// <summary>The mail server of each practice.</summary>
public sealed class MailServerStore
{
    private readonly IDbContextFactory<PracticeDb> _contexts;

    internal MailServerStore(IDbContextFactory<PracticeDb> contexts) => _contexts = contexts;

    public async Task<MailServer?> Find(Guid practiceId, CancellationToken cancel)
    {
        await using var db = _contexts.Open(practiceId);
        return await db.MailServers.AsNoTracking().SingleOrDefaultAsync(cancel);
    }

    /// <summary>Sets the server, or takes it away; letters that wait for it are tried at once.</summary>
    public async Task Set(
        Guid practiceId,
        MailServer? server,
        AuditEntry audit,
        CancellationToken cancel
    )
    {
        await using var db = _contexts.Open(practiceId);
        await using var all = await db.Database.BeginTransactionAsync(cancel);
        await db.MailServers.ExecuteDeleteAsync(cancel);
        if (server is not null)
            db.Add(server);
        db.Add(audit);
        await db.SaveChangesAsync(cancel);
        await db
            .LettersDue.Where(d => d.Writer == practiceId)
            .ExecuteUpdateAsync(set => set.SetProperty(d => d.DueAt, audit.At), cancel);
        await all.CommitAsync(cancel);
    }
}
