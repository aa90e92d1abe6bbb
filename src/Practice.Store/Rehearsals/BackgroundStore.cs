using Microsoft.EntityFrameworkCore;
using Practice.Domain.Caseload;
using Practice.Domain.Practices;
using Practice.Domain.Rehearsals;

namespace Practice.Store.Rehearsals;

/// <summary>What is known of clients before any rehearsal, one record a client.</summary>
public sealed class BackgroundStore
{
    private readonly IDbContextFactory<PracticeDb> _contexts;

    internal BackgroundStore(IDbContextFactory<PracticeDb> contexts) => _contexts = contexts;

    /// <summary>The client's background; null while nothing was told.</summary>
    public async Task<OnFile<RehearsalBackground>?> Of(
        Guid practiceId,
        Guid clientId,
        CancellationToken cancel
    )
    {
        await using var db = _contexts.Open(practiceId);
        return db.OnFileOrNull(
            await db.Backgrounds.SingleOrDefaultAsync(b => b.ClientId == clientId, cancel)
        );
    }

    public Task<OnFile<RehearsalBackground>> Add(
        RehearsalBackground background,
        AuditEntry audit,
        CancellationToken cancel
    ) => _contexts.Add(background, audit, cancel);

    public Task<SaveOutcome<RehearsalBackground>> Save(
        OnFile<RehearsalBackground> background,
        AuditEntry audit,
        CancellationToken cancel
    ) =>
        _contexts.Save(
            background,
            audit,
            db => db.Backgrounds.Where(b => b.ClientId == background.Value.ClientId),
            cancel
        );
}
