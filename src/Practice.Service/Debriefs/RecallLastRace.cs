using Practice.Domain.Caseload;
using Practice.Domain.Debriefs;
using Practice.Service.Desks;
using Practice.Store.Debriefs;
using Practice.Store.Races;

namespace Practice.Service.Debriefs;

/// <summary>A race that was talked about, for the next one to learn from.</summary>
/// <param name="Race">The race.</param>
/// <param name="Report">How it went.</param>
public sealed record RaceRecalled(RaceRow Race, DebriefReport Report);

/// <summary>Recalls what the debrief of a client's last race says, for the plan of the next.</summary>
public sealed class RecallLastRace(RaceStore races, DebriefStore debriefs)
{
    /// <param name="desk">Who asks.</param>
    /// <param name="raceId">The race that is planned for.</param>
    /// <param name="cancel">Cancels.</param>
    /// <returns>The latest race before it that was talked about; null where there is none.</returns>
    public async Task<RaceRecalled?> Run(Desk desk, Guid raceId, CancellationToken cancel)
    {
        if (await races.Find(desk.PracticeId, raceId, cancel) is not { Value: var next })
            return null;
        var reports = (
            await debriefs.OfClient(desk.PracticeId, next.ClientId, cancel)
        ).ToDictionary(d => d.RaceId, d => d.Report);
        return (await races.OfClient(desk.PracticeId, next.ClientId, cancel))
            .Where(row => row.Start < next.Start && reports.ContainsKey(row.RaceId))
            .OrderBy(row => row.Start)
            .Select(row => new RaceRecalled(row, reports[row.RaceId]))
            .LastOrDefault();
    }
}
