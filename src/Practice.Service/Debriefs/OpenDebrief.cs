using Practice.Domain.Caseload;
using Practice.Domain.Clients;
using Practice.Domain.Debriefs;
using Practice.Domain.Plans;
using Practice.Domain.Races;
using Practice.Service.Audit;
using Practice.Service.Desks;
using Practice.Store.Clients;
using Practice.Store.Debriefs;
using Practice.Store.Plans;
using Practice.Store.Races;

namespace Practice.Service.Debriefs;

/// <summary>A race that was run, and what is known of how it went.</summary>
/// <param name="Race">The race.</param>
/// <param name="Client">Who ran it, with the state it was read at.</param>
/// <param name="Plan">The plan the client held; null when none was out.</param>
/// <param name="Debrief">What was written down; null before.</param>
public sealed record DebriefFile(
    Race Race,
    OnFile<Client> Client,
    RaceWeekPlan? Plan,
    OnFile<Debrief>? Debrief
);

/// <summary>Opens the debrief of a race.</summary>
public sealed class OpenDebrief(
    RaceStore races,
    ClientStore clients,
    PlanStore plans,
    DebriefStore debriefs,
    RecordReads reads
)
{
    /// <returns>The file; null when the practice has no such race.</returns>
    public async Task<DebriefFile?> Run(Desk desk, Guid raceId, CancellationToken cancel)
    {
        if (
            await races.Find(desk.PracticeId, raceId, cancel) is not { Value: var race }
            || await clients.Find(desk.PracticeId, race.ClientId, cancel) is not { } client
        )
            return null;
        await reads.Note(desk, race.ClientId, cancel);
        return new DebriefFile(
            race,
            client,
            (await plans.Issued(desk.PracticeId, raceId, cancel))?.Plan,
            await debriefs.Find(desk.PracticeId, raceId, cancel)
        );
    }
}
