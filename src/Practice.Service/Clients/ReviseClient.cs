using Practice.Domain.Caseload;
using Practice.Domain.Clients;
using Practice.Service.Audit;
using Practice.Service.Desks;
using Practice.Store.Clients;

namespace Practice.Service.Clients;

/// <summary>Changes what is known of a client.</summary>
public sealed class ReviseClient(ClientStore clients, PracticeCalendar calendar)
{
    /// <param name="desk">Who acts.</param>
    /// <param name="client">The client as it was read; nobody's later change is overwritten.</param>
    /// <param name="details">What the form says.</param>
    /// <param name="cancel">Cancels.</param>
    public Task<SaveOutcome<Client>> Run(
        Desk desk,
        OnFile<Client> client,
        ClientDetails details,
        CancellationToken cancel
    )
    {
        var before = HealthFacts.Of(ClientDetails.Of(client.Value));
        details.ApplyTo(client.Value, calendar.Today);
        var note = desk.Note("client-revised", client.Value.Id, calendar.Now)
            .With(client.Value.Id, before, HealthFacts.Of(details));
        return clients.Save(client, note, cancel);
    }
}
