using Practice.Service.Audit;
using Practice.Service.Desks;
using Practice.Service.Races;
using Practice.Store.Plans;

namespace Practice.Service.Plans;

/// <summary>Opens a plan version on the workbench.</summary>
public sealed class OpenPlan(RaceCases cases, PlanStore plans, RecordReads reads)
{
    /// <returns>The file; null when the practice has no such version.</returns>
    public async Task<PlanFile?> Run(Desk desk, Guid versionId, CancellationToken cancel)
    {
        if (
            await plans.Find(desk.PracticeId, versionId, cancel) is not { } version
            || await cases.Open(desk, version.Value.RaceId, cancel) is not { } raceCase
        )
            return null;
        await reads.Note(desk, raceCase.Client.Id, cancel);
        return new PlanFile(
            version,
            raceCase.Client,
            raceCase.Race.Value,
            raceCase.Screening,
            raceCase.StandingHolds,
            raceCase.Foods
        );
    }
}
