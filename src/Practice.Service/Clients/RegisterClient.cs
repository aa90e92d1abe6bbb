using Practice.Domain.Clients;
using Practice.Service.Desks;
using Practice.Service.Hosting;
using Practice.Store.Clients;

namespace Practice.Service.Clients;

/// <summary>Takes a client into care. Who does not say where she lives, lives where the practice is.</summary>
public sealed class RegisterClient(
    ClientStore clients,
    PracticeCalendar calendar,
    PracticeSettings settings
)
{
    /// <returns>Key of the new client.</returns>
    public async Task<Guid> Run(
        Desk desk,
        ClientDetails details,
        BodyMassEntry mass,
        CancellationToken cancel
    )
    {
        var client = Begin(desk, details, mass);
        await clients.Add(client, desk.Note("client-registered", client.Id, calendar.Now), cancel);
        return client.Id;
    }

    /// <summary>The client, not on file yet.</summary>
    internal Client Begin(Desk desk, ClientDetails details, BodyMassEntry mass)
    {
        var client = Client.Register(
            desk.PracticeId,
            details.GivenName,
            details.FamilyName,
            details.BirthDate,
            details.Physique,
            mass
        );
        details.ApplyTo(client, calendar.Today);
        client.LiveIn(details.ZoneId ?? settings.Zone.Id);
        // whoever takes a client into care has her in the caseload; an assistant has none
        if (desk.MayDecide)
            client.Assign(desk.AccountId);
        return client;
    }
}
