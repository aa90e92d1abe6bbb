using Practice.Domain.Caseload;
using Practice.Domain.Clients;
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
        client.Value.Weigh(entry);
        return clients.Save(
            client,
            desk.Note("client-weighed", client.Value.Id, calendar.Now),
            cancel
        );
    }
}
