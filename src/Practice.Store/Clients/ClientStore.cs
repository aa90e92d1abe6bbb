using System.Collections.Immutable;
using Microsoft.EntityFrameworkCore;
using NodaTime;
using Practice.Domain.Caseload;
using Practice.Domain.Clients;
using Practice.Domain.Practices;
using Practice.Store.Races;

namespace Practice.Store.Clients;

/// <summary>Who a client is, to know her again.</summary>
public sealed record KnownClient(string GivenName, string FamilyName, LocalDate BirthDate);

/// <summary>The clients of a practice.</summary>
public sealed class ClientStore
{
    private readonly IDbContextFactory<PracticeDb> _contexts;

    internal ClientStore(IDbContextFactory<PracticeDb> contexts) => _contexts = contexts;

    public async Task<OnFile<Client>?> Find(
        Guid practiceId,
        Guid clientId,
        CancellationToken cancel
    )
    {
        await using var db = _contexts.Open(practiceId);
        return db.OnFileOrNull(
            await db.Clients.SingleOrDefaultAsync(c => c.Id == clientId, cancel)
        );
    }

    /// <summary>Clients by key.</summary>
    public async Task<ImmutableDictionary<Guid, Client>> OfSeveral(
        Guid practiceId,
        IReadOnlyCollection<Guid> clientIds,
        CancellationToken cancel
    )
    {
        await using var db = _contexts.Open(practiceId);
        var found = await db.Clients.Where(c => clientIds.Contains(c.Id)).ToListAsync(cancel);
        return found.ToImmutableDictionary(c => c.Id);
    }

    public Task<OnFile<Client>> Add(Client client, AuditEntry audit, CancellationToken cancel) =>
        _contexts.Add(client, audit, cancel);

    /// <summary>All of them or none.</summary>
    public async Task Add(
        IReadOnlyCollection<Client> clients,
        ImmutableArray<AuditEntry> audits,
        CancellationToken cancel
    )
    {
        if (clients.Count == 0)
            return;
        await using var db = _contexts.Open(audits[0].PracticeId);
        db.AddRange(clients);
        db.AddRange(audits);
        await db.SaveChangesAsync(cancel);
    }

    /// <summary>Names and days of birth of all clients, to know one again.</summary>
    public async Task<ImmutableArray<KnownClient>> Known(Guid practiceId, CancellationToken cancel)
    {
        await using var db = _contexts.Open(practiceId);
        return
        [
            .. await db
                .Clients.Select(c => new KnownClient(c.GivenName, c.FamilyName, c.BirthDate))
                .ToListAsync(cancel),
        ];
    }

    public Task<SaveOutcome<Client>> Save(
        OnFile<Client> client,
        AuditEntry audit,
        CancellationToken cancel
    ) =>
        _contexts.Save(client, audit, db => db.Clients.Where(c => c.Id == client.Value.Id), cancel);

    /// <summary>
    /// Removes a client with races, plans and screening, unless a legal hold stands. Only lines of audit stay, which
    /// name no client.
    /// </summary>
    public async Task<bool> Erase(Guid clientId, AuditEntry audit, CancellationToken cancel)
    {
        await using var db = _contexts.Open(audit.PracticeId);
        await using var all = await db.Database.BeginTransactionAsync(cancel);
        var erased = await db
            .Clients.Where(c => c.Id == clientId && c.LegalHold == null)
            .ExecuteDeleteAsync(cancel);
        if (erased == 0)
            return false;
        db.Add(audit);
        await db.SaveChangesAsync(cancel);
        await all.CommitAsync(cancel);
        return true;
    }

    /// <summary>
    /// Clients whose name or address contains each word, whatever its case and accents, by family name; all of them for
    /// an empty text.
    /// </summary>
    public async Task<ImmutableArray<ClientRow>> Search(
        Guid practiceId,
        string text,
        LocalDate today,
        CancellationToken cancel,
        int take = 500,
        Guid? responsibleId = null
    )
    {
        await using var db = _contexts.Open(practiceId);
        var clients = db.Clients.AsQueryable();
        if (responsibleId is not null)
            clients = clients.Where(c => c.ResponsibleId == responsibleId);
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var like = $"%{LikePattern.Escape(word)}%";
            clients = clients.Where(c =>
                EF.Functions.Like(
                    EF.Property<string>(c, ClientMapping.Words),
                    PlainWords.Of(like),
                    "\\"
                )
            );
        }

        var found = await clients
            .OrderBy(c => c.FamilyName)
            .ThenBy(c => c.GivenName)
            .ThenBy(c => c.Id)
            .Take(take)
            .Select(c => new ClientRow(
                c.Id,
                c.GivenName,
                c.FamilyName,
                c.Email,
                c.BirthDate,
                c.Units,
                null
            ))
            .ToListAsync(cancel);
        var next = await NextRaces(db, [.. found.Select(c => c.ClientId)], today, cancel);
        return [.. found.Select(c => c with { NextRace = next.GetValueOrDefault(c.ClientId) })];
    }

    private static async Task<Dictionary<Guid, RaceRow>> NextRaces(
        PracticeDb db,
        Guid[] clientIds,
        LocalDate today,
        CancellationToken cancel
    )
    {
        var midnight = today.AtMidnight();
        var coming = await db.Rows(
                db.Races.Where(r => r.Start >= midnight && clientIds.Contains(r.ClientId))
            )
            .ToListAsync(cancel);
        return coming.DistinctBy(r => r.ClientId).ToDictionary(r => r.ClientId);
    }

    /// <summary>How many clients each member has in care; under the empty key those in nobody's caseload.</summary>
    public async Task<ImmutableDictionary<Guid, int>> Caseloads(
        Guid practiceId,
        CancellationToken cancel
    )
    {
        await using var db = _contexts.Open(practiceId);
        var counts = await db
            .Clients.GroupBy(c => c.ResponsibleId ?? Guid.Empty)
            .Select(g => new { g.Key, Count = g.Count() })
            .ToListAsync(cancel);
        return counts.ToImmutableDictionary(c => c.Key, c => c.Count);
    }

    /// <summary>Hands a caseload over.</summary>
    /// <returns>How many clients changed hands.</returns>
    public async Task<int> HandOver(
        Guid? from,
        Guid? to,
        AuditEntry audit,
        CancellationToken cancel
    )
    {
        await using var db = _contexts.Open(audit.PracticeId);
        await using var all = await db.Database.BeginTransactionAsync(cancel);
        var count = await db
            .Clients.Where(c => c.ResponsibleId == from)
            .ExecuteUpdateAsync(set => set.SetProperty(c => c.ResponsibleId, to), cancel);
        db.Add(audit);
        await db.SaveChangesAsync(cancel);
        await all.CommitAsync(cancel);
        return count;
    }

    /// <summary>Clients on whom no legal hold stands and who have no race from a day on.</summary>
    public async Task<ImmutableArray<Client>> WithoutRaceSince(
        Guid practiceId,
        LocalDate day,
        CancellationToken cancel
    )
    {
        await using var db = _contexts.Open(practiceId);
        var midnight = day.AtMidnight();
        return
        [
            .. await db
                .Clients.AsNoTracking()
                .Where(c =>
                    c.LegalHold == null
                    && !db.Races.Any(r => r.ClientId == c.Id && r.Start >= midnight)
                )
                .ToListAsync(cancel),
        ];
    }

    /// <summary>How many clients the practice has.</summary>
    public async Task<int> Count(Guid practiceId, CancellationToken cancel)
    {
        await using var db = _contexts.Open(practiceId);
        return await db.Clients.CountAsync(cancel);
    }
}
