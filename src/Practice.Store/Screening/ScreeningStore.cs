using Microsoft.EntityFrameworkCore;
using Practice.Domain.Caseload;
using Practice.Domain.Practices;
using Practice.Domain.Screening;

namespace Practice.Store.Screening;

/// <summary>The screenings of a practice's clients, one a client.</summary>
public sealed class ScreeningStore
{
    private readonly IDbContextFactory<PracticeDb> _contexts;

    internal ScreeningStore(IDbContextFactory<PracticeDb> contexts) => _contexts = contexts;

    /// <summary>The screening of a client; null before the first answer.</summary>
    public async Task<OnFile<ScreeningRecord>?> Of(
        Guid practiceId,
        Guid clientId,
        CancellationToken cancel
    )
    {
        await using var db = _contexts.Open(practiceId);
        return db.OnFileOrNull(
            await db.Screenings.SingleOrDefaultAsync(s => s.ClientId == clientId, cancel)
        );
    }

    public Task<OnFile<ScreeningRecord>> Add(
        ScreeningRecord screening,
        AuditEntry audit,
        CancellationToken cancel
    ) => _contexts.Add(screening, audit, cancel);

    public Task<SaveOutcome<ScreeningRecord>> Save(
        OnFile<ScreeningRecord> screening,
        AuditEntry audit,
        CancellationToken cancel
    ) =>
        _contexts.Save(
            screening,
            audit,
            db => db.Screenings.Where(s => s.Id == screening.Value.Id),
            cancel
        );
}
