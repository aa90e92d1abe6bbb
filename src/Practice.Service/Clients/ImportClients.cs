using Practice.Domain.Clients;
using Practice.Domain.Foods;
using Practice.Domain.Quantities;
using Practice.Domain.Tables;
using Practice.Service.Desks;
using Practice.Service.Tables;
using Practice.Store.Clients;
using Practice.Store.Practices;

namespace Practice.Service.Clients;

/// <summary>Takes in a table of clients: all of them or none. Nobody of them is screened yet.</summary>
public sealed class ImportClients(
    ClientStore clients,
    PracticeStore practices,
    RegisterClient register,
    PracticeCalendar calendar
)
{
    /// <summary>The table as it would be taken in; nothing is kept.</summary>
    public async Task<ImportReading<ClientOfTable>> Preview(
        Desk desk,
        ImportTable table,
        ColumnMatch match,
        CancellationToken cancel
    )
    {
        ArgumentNullException.ThrowIfNull(table);
        var today = calendar.Today;
        var usual = (await practices.Find(desk.PracticeId, cancel))?.Value.Units ?? default;
        var known = (await clients.Known(desk.PracticeId, cancel))
            .Select(c => ClientColumns.KeyOf(c.GivenName, c.FamilyName, c.BirthDate))
            .ToHashSet(StringComparer.Ordinal);
        return Reading.Of(
            table,
            match,
            ClientColumns.All,
            row => ClientColumns.Read(row, today, usual),
            Same,
            known
        );
    }

    /// <summary>Takes it in; whoever does has them in the caseload, an assistant has none.</summary>
    public async Task<TakeOutcome> Run(
        Desk desk,
        ImportTable table,
        ColumnMatch match,
        CancellationToken cancel
    )
    {
        var reading = await Preview(desk, table, match, cancel);
        if (Reading.Refusal(reading, match, ClientColumns.All) is { } refusal)
            return refusal;
        var registered = reading.Rows.Select(r => Begin(desk, r.Value)).ToList();
        await clients.Add(
            registered,
            [
                .. registered.Select(c =>
                    desk.Note("client-registered", c.Id, calendar.Now, "from a table")
                ),
            ],
            cancel
        );
        return new Taken(registered.Count);
    }

    private Client Begin(Desk desk, ClientOfTable told) =>
        register.Begin(
            desk,
            told.Details,
            new BodyMassEntry(calendar.Today, BodyMass.OfKilograms(told.MassKg!.Value))
        );

    private static (string Column, string Key)? Same(ClientOfTable client) =>
        client.Details is { FamilyName.Length: > 0, BirthDate: var born } details && born != default
            ? (
                ClientColumns.Family,
                ClientColumns.KeyOf(details.GivenName, details.FamilyName, born)
            )
            : null;
}
