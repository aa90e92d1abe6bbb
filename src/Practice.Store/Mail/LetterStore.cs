using System.Collections.Immutable;
using Microsoft.EntityFrameworkCore;
using NodaTime;
using Practice.Domain.Caseload;
using Practice.Domain.Practices;
using Practice.Domain.Rehearsals;

namespace Practice.Store.Mail;

/// <summary>What became of trying to send a letter.</summary>
/// <param name="Problem">What went wrong; null when the mail server took it.</param>
/// <param name="HasServer">False when there is nothing to send through: the letter waits and no try is counted.</param>
public sealed record SendResult(string? Problem, bool HasServer = true)
{
    public static SendResult Sent { get; } = new(Problem: null);

    public static SendResult NoServer { get; } =
        new("No mail server is set on the Practice page.", HasServer: false);
}

/// <summary>
/// Letters of a practice and the queue of those that wait. Any number of replicas take from the queue at once: a row
/// that one of them holds is passed over by the others, and one whose holder died is free again.
/// </summary>
public sealed class LetterStore
{
    private static readonly Duration WithoutServer = Duration.FromMinutes(5);

    private readonly IDbContextFactory<PracticeDb> _contexts;

    internal LetterStore(IDbContextFactory<PracticeDb> contexts) => _contexts = contexts;

    public async Task Post(Letter letter, AuditEntry audit, CancellationToken cancel)
    {
        await using var db = _contexts.Open(letter.PracticeId);
        db.Post(letter);
        db.Add(audit);
        await db.SaveChangesAsync(cancel);
    }

    /// <summary>Posts a letter together with the phone link it brings.</summary>
    /// <param name="letter">The letter.</param>
    /// <param name="brings">The link in it; null for none.</param>
    /// <param name="audit">Line of audit.</param>
    /// <param name="cancel">Cancels.</param>
    /// <returns>Whether it was posted: false when the same was said of this rehearsal already.</returns>
    public async Task<bool> PostOnce(
        Letter letter,
        PhoneLink? brings,
        AuditEntry audit,
        CancellationToken cancel
    )
    {
        await using var db = _contexts.Open(letter.PracticeId);
        db.Post(letter);
        if (brings is not null)
            db.Add(brings);
        db.Add(audit);
        try
        {
            await db.SaveChangesAsync(cancel);
            return true;
        }
        catch (DbUpdateException e) when (e.IsOnFileAlready())
        {
            return false;
        }
    }

    /// <summary>Letters to a client, the latest first.</summary>
    public async Task<ImmutableArray<Letter>> ToClient(
        Guid practiceId,
        Guid clientId,
        CancellationToken cancel
    )
    {
        await using var db = _contexts.Open(practiceId);
        return
        [
            .. await db
                .Letters.AsNoTracking()
                .Where(l => l.ClientId == clientId)
                .OrderByDescending(l => l.Id)
                .ToListAsync(cancel),
        ];
    }

    /// <summary>The practice's letters that are not sent yet or were given up since, the latest first.</summary>
    public async Task<ImmutableArray<Letter>> Unsent(
        Guid practiceId,
        Instant since,
        CancellationToken cancel
    )
    {
        await using var db = _contexts.Open(practiceId);
        return
        [
            .. await db
                .Letters.AsNoTracking()
                .Where(l => l.SentAt == null && l.WrittenAt > since)
                .OrderByDescending(l => l.Id)
                .Take(100)
                .ToListAsync(cancel),
        ];
    }

    /// <summary>Takes one letter that is due and sends it, all in one transaction.</summary>
    /// <returns>Whether there was one.</returns>
    public async Task<bool> SendNext(
        Instant now,
        Func<Letter, MailServer?, CancellationToken, Task<SendResult>> send,
        CancellationToken cancel
    )
    {
        await using var db = _contexts.CreateDbContext();
        await using var all = await db.Database.BeginTransactionAsync(cancel);
        var found = await db
            .LettersDue.FromSql(
                $"select * from letter_due where due_at <= {now} order by due_at limit 1 for update skip locked"
            )
            .ToListAsync(cancel);
        if (found is not [var due])
            return false;
        if (await Settle(db, due, now, send, cancel) is { } again)
            due.DueAt = again;
        else
            db.Remove(due);
        await db.SaveChangesAsync(cancel);
        await all.CommitAsync(cancel);
        return true;
    }

    /// <returns>When to try again; null when the letter needs no more care.</returns>
    private static async Task<Instant?> Settle(
        PracticeDb db,
        LetterDue due,
        Instant now,
        Func<Letter, MailServer?, CancellationToken, Task<SendResult>> send,
        CancellationToken cancel
    )
    {
        // the letter itself is seen only inside its practice
        db.Practice = due.Writer;
        await db.Database.ExecuteSqlAsync(
            $"select set_config('practice.id', {due.Writer.ToString()}, true)",
            cancel
        );
        if (
            await db.Letters.SingleOrDefaultAsync(l => l.Id == due.LetterId, cancel)
            is not { IsWaiting: true } letter
        )
            return null;
        if (!await StillHolds(db, letter, cancel))
        {
            letter.CallOff("The rehearsal was moved or called off meanwhile.", now);
            return null;
        }
        var server = await db.MailServers.AsNoTracking().SingleOrDefaultAsync(cancel);
        var result = await send(letter, server, cancel);
        if (!result.HasServer)
            return now + WithoutServer;
        if (result.Problem is { } problem)
            return letter.Failed(problem, now);
        letter.Sent(now);
        return null;
    }

    /// <summary>A reminder is only worth sending while its rehearsal stands on its day.</summary>
    private static async Task<bool> StillHolds(
        PracticeDb db,
        Letter letter,
        CancellationToken cancel
    ) =>
        letter.Kind != LetterKind.RehearsalReminder
        || await db.Rehearsals.AnyAsync(
            r =>
                r.Id == letter.RehearsalId
                && r.RunOn == letter.RunOn
                && r.Status == RehearsalStatus.Booked,
            cancel
        );
}
