using System.Collections.Immutable;
using System.Linq.Expressions;
using Microsoft.EntityFrameworkCore;
using NodaTime;
using Practice.Domain.Caseload;
using Practice.Domain.Plans;
using Practice.Domain.Practices;
using Practice.Domain.Rehearsals;
using Practice.Store.Sealing;

namespace Practice.Store.Rehearsals;

/// <summary>The rehearsals of a practice's clients.</summary>
public sealed class RehearsalStore
{
    private static readonly RehearsalStatus[] Told =
    [
        RehearsalStatus.FedBack,
        RehearsalStatus.Reviewed,
    ];

    private readonly IDbContextFactory<PracticeDb> _contexts;

    internal RehearsalStore(IDbContextFactory<PracticeDb> contexts) => _contexts = contexts;

    /// <summary>A rehearsal by its key.</summary>
    public async Task<OnFile<Rehearsal>?> Find(
        Guid practiceId,
        Guid rehearsalId,
        CancellationToken cancel
    )
    {
        await using var db = _contexts.Open(practiceId);
        return db.OnFileOrNull(
            await db.Rehearsals.SingleOrDefaultAsync(r => r.Id == rehearsalId, cancel)
        );
    }

    public Task<OnFile<Rehearsal>> Add(
        Rehearsal rehearsal,
        AuditEntry audit,
        CancellationToken cancel
    ) => _contexts.Add(rehearsal, audit, cancel);

    public Task<SaveOutcome<Rehearsal>> Save(
        OnFile<Rehearsal> rehearsal,
        AuditEntry audit,
        CancellationToken cancel
    ) =>
        _contexts.Save(
            rehearsal,
            audit,
            db => db.Rehearsals.Where(r => r.Id == rehearsal.Value.Id),
            cancel
        );

    /// <summary>Keeps a review together with the plan version that came of it: both or none.</summary>
    public Task<SaveOutcome<Rehearsal>> Save(
        OnFile<Rehearsal> rehearsal,
        AuditEntry audit,
        PlanVersion next,
        AuditEntry begun,
        CancellationToken cancel
    ) =>
        _contexts.Save(
            rehearsal,
            audit,
            db => db.Rehearsals.Where(r => r.Id == rehearsal.Value.Id),
            cancel,
            next,
            begun
        );

    /// <summary>Rehearsals for one race, earliest first, cancelled ones included.</summary>
    public async Task<ImmutableArray<Rehearsal>> OfRace(
        Guid practiceId,
        Guid raceId,
        CancellationToken cancel
    )
    {
        await using var db = _contexts.Open(practiceId);
        return [.. await InOrder(db.Rehearsals.Where(r => r.RaceId == raceId)).ToListAsync(cancel)];
    }

    /// <summary>Rehearsals of one client for whatever race, earliest first, cancelled ones included.</summary>
    public async Task<ImmutableArray<Rehearsal>> OfClient(
        Guid practiceId,
        Guid clientId,
        CancellationToken cancel
    )
    {
        await using var db = _contexts.Open(practiceId);
        return
        [
            .. await InOrder(db.Rehearsals.Where(r => r.ClientId == clientId)).ToListAsync(cancel),
        ];
    }

    /// <summary>Rehearsals for some races in brief, earliest first, cancelled ones left out.</summary>
    public async Task<ImmutableArray<RehearsalRow>> OfRaces(
        Guid practiceId,
        IReadOnlyCollection<Guid> raceIds,
        CancellationToken cancel
    )
    {
        await using var db = _contexts.Open(practiceId);
        return await Rows(db, r => raceIds.Contains(r.RaceId), cancel);
    }

    /// <summary>Every rehearsal of the caseload that was told of and not yet reviewed, or that told of a warning sign.</summary>
    public async Task<ImmutableArray<RehearsalRow>> ToRead(
        Guid practiceId,
        CancellationToken cancel
    )
    {
        await using var db = _contexts.Open(practiceId);
        var told = await Rows(db, r => Told.Contains(r.Status), cancel);
        return [.. told.Where(r => r.Status == RehearsalStatus.FedBack || r.Warns)];
    }

    /// <summary>Booked rehearsals with their run between two days of which no letter has reminded, earliest first.</summary>
    public async Task<ImmutableArray<Rehearsal>> Unreminded(
        Guid practiceId,
        LocalDate from,
        LocalDate to,
        CancellationToken cancel
    )
    {
        await using var db = _contexts.Open(practiceId);
        var unreminded = db.Rehearsals.Where(r =>
            r.Status == RehearsalStatus.Booked
            && r.RunOn >= from
            && r.RunOn <= to
            && !db.Letters.Any(l =>
                l.RehearsalId == r.Id
                && l.RunOn == r.RunOn
                && l.Kind == LetterKind.RehearsalReminder
            )
        );
        return [.. await InOrder(unreminded).ToListAsync(cancel)];
    }

    /// <summary>Rehearsals in which a client told of a warning sign, earliest first.</summary>
    public async Task<ImmutableArray<Rehearsal>> WithWarningSigns(
        Guid practiceId,
        IReadOnlyCollection<Guid> clientIds,
        CancellationToken cancel
    )
    {
        await using var db = _contexts.Open(practiceId);
        var told = await Rows(
            db,
            r => clientIds.Contains(r.ClientId) && Told.Contains(r.Status),
            cancel
        );
        var warning = told.Where(r => r.Warns).Select(r => r.RehearsalId).ToArray();
        return warning is []
            ? []
            :
            [
                .. await InOrder(db.Rehearsals.Where(r => warning.Contains(r.Id)))
                    .ToListAsync(cancel),
            ];
    }

    private static IQueryable<Rehearsal> InOrder(IQueryable<Rehearsal> rehearsals) =>
        rehearsals.OrderBy(r => r.RunOn).ThenBy(r => r.Id);

    /// <summary>
    /// In brief, without those cancelled. Whether a sign warns is a sealed fact: the database cannot be asked for it, so
    /// the feedback is opened here.
    /// </summary>
    private static async Task<ImmutableArray<RehearsalRow>> Rows(
        PracticeDb db,
        Expression<Func<Rehearsal, bool>> which,
        CancellationToken cancel
    )
    {
        var feedback = SealedColumn.Of<Rehearsal>(db, nameof(Rehearsal.Feedback));
        var rows = await InOrder(db.Rehearsals.Where(which))
            .Where(r => r.Status != RehearsalStatus.Cancelled)
            .Select(r => new
            {
                r.Id,
                r.RaceId,
                r.ClientId,
                r.Kind,
                r.RunOn,
                r.Status,
                Feedback = EF.Property<byte[]?>(r, feedback.Column.Name),
            })
            .ToListAsync(cancel);
        return
        [
            .. rows.Select(r => new RehearsalRow(
                r.Id,
                r.RaceId,
                r.ClientId,
                r.Kind,
                r.RunOn,
                r.Status,
                feedback.Open<Feedback>(db, r.Id, r.Feedback)?.WarningSigns is { IsEmpty: false }
            )),
        ];
    }
}
