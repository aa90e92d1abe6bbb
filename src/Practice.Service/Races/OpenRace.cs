using Practice.Domain.Targets;
using Practice.Service.Audit;
using Practice.Service.Desks;
using Practice.Store.Plans;
using Practice.Store.Practices;

namespace Practice.Service.Races;

/// <summary>Opens a race with its targets.</summary>
public sealed class OpenRace(
    RaceCases cases,
    PlanStore plans,
    PracticeStore practices,
    RecordReads reads
)
{
    /// <param name="desk">Who acts.</param>
    /// <param name="raceId">The race.</param>
    /// <param name="choices">What to compute from; null for what its latest plan chose, or else the defaults.</param>
    /// <param name="cancel">Cancels.</param>
    /// <returns>The file; null when the practice has no such race.</returns>
    public async Task<RaceFile?> Run(
        Desk desk,
        Guid raceId,
        LoadingChoices? choices,
        CancellationToken cancel
    )
    {
        if (await cases.Open(desk, raceId, cancel) is not { } raceCase)
            return null;
        await reads.Note(desk, raceCase.Client.Id, cancel);
        choices ??=
            (await plans.Latest(desk.PracticeId, raceId, cancel))?.Value.Plan.Choices
            ?? await UsualChoices(desk, cancel);
        return new RaceFile(
            raceCase.Client,
            raceCase.Race,
            choices,
            raceCase.Targets(choices),
            raceCase.Screening,
            raceCase.StandingHolds,
            await plans.Versions(desk.PracticeId, raceId, cancel),
            raceCase.Today
        );
    }

    private async Task<LoadingChoices> UsualChoices(Desk desk, CancellationToken cancel) =>
        (await practices.Find(desk.PracticeId, cancel))?.Value.Defaults is { } usual
            ? new LoadingChoices
            {
                CarbohydrateGPerKg = usual.CarbohydrateGPerKg,
                WindowHours = usual.WindowHours,
                OccasionsPerDay = usual.OccasionsPerDay,
                Sittings = usual.Sittings,
                DrinksShare = usual.DrinksShare,
            }
            : new LoadingChoices();
}
