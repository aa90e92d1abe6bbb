using Microsoft.EntityFrameworkCore;
using Practice.Domain.Caseload;
using Practice.Domain.Practices;
using Practice.Domain.Rehearsals;
using Practice.Store.Mail;

namespace Practice.Store.Portal;

/// <summary>What became of an entry from a phone.</summary>
public enum Receipt
{
    /// <summary>It is on file.</summary>
    Saved,

    /// <summary>It was on file already; nothing was changed.</summary>
    SavedBefore,

    /// <summary>The rehearsal was changed meanwhile; nothing was saved.</summary>
    Conflict,
}

/// <summary>Takes in what phones send, each entry once however often it is sent.</summary>
public sealed class FeedbackStore
{
    private readonly IDbContextFactory<PracticeDb> _contexts;

    internal FeedbackStore(IDbContextFactory<PracticeDb> contexts) => _contexts = contexts;

    public async Task<bool> Has(
        Guid practiceId,
        Guid rehearsalId,
        Guid key,
        CancellationToken cancel
    )
    {
        await using var db = _contexts.Open(practiceId);
        return await db.ReceivedFeedback.AnyAsync(
            r => r.RehearsalId == rehearsalId && r.Key == key,
            cancel
        );
    }

    /// <summary>Saves a rehearsal that was told of, its key and its line of audit together or not at all.</summary>
    /// <param name="told">The rehearsal with its feedback, as it was read.</param>
    /// <param name="key">The name the phone gave the entry.</param>
    /// <param name="audit">Who told.</param>
    /// <param name="thanks">The letter of thanks; null for none.</param>
    /// <param name="cancel">Cancels.</param>
    public async Task<Receipt> Receive(
        OnFile<Rehearsal> told,
        Guid key,
        AuditEntry audit,
        Letter? thanks,
        CancellationToken cancel
    )
    {
        await using var db = _contexts.Open(audit.PracticeId);
        await using var together = await db.Database.BeginTransactionAsync(cancel);
        // the same entry sent twice at once: the second waits here for the first, and then finds its key
        var isNew = await db.Database.ExecuteSqlAsync(
            $"""
            insert into received_feedback (practice_id, rehearsal_id, key, at)
            values ({audit.PracticeId}, {told.Value.Id}, {key}, {audit.At}) on conflict do nothing
            """,
            cancel
        );
        if (isNew == 0)
            return Receipt.SavedBefore;
        var entry = db.Update(told.Value);
        entry.Property<uint>(TenantMapping.Version).OriginalValue = told.Version;
        db.Add(audit);
        if (thanks is not null)
            db.Post(thanks);
        try
        {
            await db.SaveChangesAsync(cancel);
        }
        catch (DbUpdateException e) when (e is DbUpdateConcurrencyException || e.IsOnFileAlready())
        {
            // another entry of the same rehearsal came first, and with it its thanks
            return Receipt.Conflict;
        }
        await together.CommitAsync(cancel);
        return Receipt.Saved;
    }
}
