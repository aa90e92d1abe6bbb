using Practice.Domain.Caseload;
using Practice.Domain.Clients;
using Practice.Service.Desks;
using Practice.Store.Clients;

namespace Practice.Service.Privacy;

/// <summary>Records that a client agreed to what is kept of her, or took it back.</summary>
public sealed class RecordConsent(ClientStore clients, PracticeCalendar calendar)
{
    /// <summary>She agreed today, to the text that is asked now.</summary>
    public Task<SaveOutcome<Client>> Run(
        Desk desk,
        OnFile<Client> client,
        ConsentWay way,
        CancellationToken cancel
    )
    {
        ArgumentNullException.ThrowIfNull(client);
        client.Value.Agree(
            new Consent(calendar.Today, ConsentText.Current.Version, way, desk.Name)
        );
        return Save(desk, client, "consent-given", cancel);
    }

    /// <summary>She took it back today.</summary>
    public Task<SaveOutcome<Client>> TakeBack(
        Desk desk,
        OnFile<Client> client,
        CancellationToken cancel
    )
    {
        ArgumentNullException.ThrowIfNull(client);
        client.Value.TakeBackConsent(calendar.Today);
        return Save(desk, client, "consent-withdrawn", cancel);
    }

    private Task<SaveOutcome<Client>> Save(
        Desk desk,
        OnFile<Client> client,
        string what,
        CancellationToken cancel
    ) => clients.Save(client, desk.Note(what, client.Value.Id, calendar.Now), cancel);
}
