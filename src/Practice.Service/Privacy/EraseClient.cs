using Practice.Domain.Caseload;
using Practice.Domain.Clients;
using Practice.Service.Desks;
using Practice.Store.Clients;

namespace Practice.Service.Privacy;

/// <summary>What became of erasing.</summary>
public abstract record EraseOutcome;

/// <summary>Nothing of the client is left but lines of audit that name nobody.</summary>
public sealed record Erased : EraseOutcome;

/// <summary>A legal hold stands.</summary>
/// <param name="Hold">Which.</param>
public sealed record KeptByLaw(LegalHold Hold) : EraseOutcome;

/// <summary>The practice has no such client.</summary>
public sealed record NoSuchClient : EraseOutcome;

/// <summary>Erases a client, or sets what stands against it. The owner's, since it cannot be undone.</summary>
public sealed class EraseClient(ClientStore clients, PracticeCalendar calendar)
{
    public async Task<EraseOutcome> Run(Desk desk, Guid clientId, CancellationToken cancel)
    {
        NotAllowedException.Unless(desk.MayRunPractice);
        var note = desk.Note("client-erased", clientId, calendar.Now);
        if (await clients.Erase(clientId, note, cancel))
            return new Erased();
        return
            await clients.Find(desk.PracticeId, clientId, cancel) is { Value.LegalHold: { } hold }
            ? new KeptByLaw(hold)
            : new NoSuchClient();
    }

    /// <summary>From now on the record must be kept.</summary>
    /// <exception cref="ArgumentException">The reason is empty or cannot be kept.</exception>
    public Task<SaveOutcome<Client>> Keep(
        Desk desk,
        OnFile<Client> client,
        string reason,
        CancellationToken cancel
    )
    {
        NotAllowedException.Unless(desk.MayRunPractice);
        ArgumentNullException.ThrowIfNull(client);
        client.Value.Keep(LegalHold.For(reason, calendar.Today, desk.Name));
        return clients.Save(
            client,
            desk.Note("legal-hold-set", client.Value.Id, calendar.Now),
            cancel
        );
    }

    /// <summary>The record may be erased again.</summary>
    public Task<SaveOutcome<Client>> Release(
        Desk desk,
        OnFile<Client> client,
        CancellationToken cancel
    )
    {
        NotAllowedException.Unless(desk.MayRunPractice);
        ArgumentNullException.ThrowIfNull(client);
        client.Value.Keep(null);
        return clients.Save(
            client,
            desk.Note("legal-hold-ended", client.Value.Id, calendar.Now),
            cancel
        );
    }
}
