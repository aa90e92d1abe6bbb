using Practice.Service.Audit;
using Practice.Service.Desks;
using Practice.Service.Foods;
using Practice.Service.Rehearsals;
using Practice.Service.Screening;
using Practice.Store.Clients;
using Practice.Store.Debriefs;
using Practice.Store.Races;

namespace Practice.Service.Clients;

/// <summary>Opens a client's file.</summary>
public sealed class OpenClient(
    ClientStore clients,
    RaceStore races,
    DebriefStore debriefs,
    CurrentScreening screenings,
    WarningHolds warnings,
    RecordReads reads,
    Larder larder,
    PracticeCalendar calendar
)
{
    /// <returns>The file; null when the practice has no such client.</returns>
    public async Task<ClientFile?> Run(Desk desk, Guid clientId, CancellationToken cancel)
    {
        if (await clients.Find(desk.PracticeId, clientId, cancel) is not { } client)
            return null;
        await reads.Note(desk, clientId, cancel);
        var screening = await screenings.Of(desk, clientId, cancel);
        var warning = await warnings.Of(desk, clientId, screening, cancel);
        var standing = screening.StandingHolds(client.Value, calendar.Today);
        return new ClientFile(
            client,
            await races.OfClient(desk.PracticeId, clientId, cancel),
            screening,
            screening.Outcome(client.Value, calendar.Today),
            warning is null ? standing : [warning, .. standing],
            warning,
            await larder.Run(desk, cancel)
        )
        {
            Debriefs = await debriefs.OfClient(desk.PracticeId, clientId, cancel),
        };
    }
}
