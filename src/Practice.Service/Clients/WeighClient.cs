using Practice.Domain.Caseload;
using Practice.Domain.Clients;
using Practice.Service.Audit;
using Practice.Service.Desks;
using Practice.Store.Clients;

namespace Practice.Service.Clients;

/// <summary>Records a weighing.</summary>
public sealed class WeighClient(ClientStore clients, PracticeCalendar calendar)
{
    public Task<SaveOutcome<Client>> Run(
        Desk desk,
        OnFile<Client> client,
        BodyMassEntry entry,
        CancellationToken cancel
    )
    {
        var before = HealthFacts.Of(client.Value.BodyMassLog);
        client.Value.Weigh(entry);
        var note = desk.Note("client-weighed", client.Value.Id, calendar.Now)
            .With(client.Value.Id, before, HealthFacts.Of(client.Value.BodyMassLog));
        return clients.Save(client, note, cancel);
    }
}
