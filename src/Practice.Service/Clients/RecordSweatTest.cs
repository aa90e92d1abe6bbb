using System.Collections.Immutable;
using Practice.Domain.Caseload;
using Practice.Domain.Clients;
using Practice.Service.Audit;
using Practice.Service.Desks;
using Practice.Store.Clients;

namespace Practice.Service.Clients;

/// <summary>Keeps the log of sweat tests.</summary>
public sealed class RecordSweatTest(ClientStore clients, PracticeCalendar calendar)
{
    /// <summary>Adds a test; another of the same day is replaced.</summary>
    /// <exception cref="ArgumentException">A figure cannot be one of a sweat test.</exception>
    public Task<SaveOutcome<Client>> Run(
        Desk desk,
        OnFile<Client> client,
        SweatTest test,
        CancellationToken cancel
    )
    {
        var before = HealthFacts.Of(client.Value.SweatLog);
        client.Value.Record(test);
        return Save(desk, client, before, "sweat-test-recorded", cancel);
    }

    /// <summary>Takes a test off the log.</summary>
    public Task<SaveOutcome<Client>> Forget(
        Desk desk,
        OnFile<Client> client,
        SweatTest test,
        CancellationToken cancel
    )
    {
        var before = HealthFacts.Of(client.Value.SweatLog);
        client.Value.ForgetSweatTest(test.On);
        return Save(desk, client, before, "sweat-test-removed", cancel);
    }

    private Task<SaveOutcome<Client>> Save(
        Desk desk,
        OnFile<Client> client,
        ImmutableDictionary<string, string> before,
        string what,
        CancellationToken cancel
    )
    {
        var note = desk.Note(what, client.Value.Id, calendar.Now)
            .With(client.Value.Id, before, HealthFacts.Of(client.Value.SweatLog));
        return clients.Save(client, note, cancel);
    }
}
