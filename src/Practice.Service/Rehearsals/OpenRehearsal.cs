using System.Collections.Immutable;
using Practice.Domain.Caseload;
using Practice.Domain.Plans;
using Practice.Domain.Rehearsals;
using Practice.Service.Audit;
using Practice.Service.Desks;
using Practice.Service.Races;
using Practice.Store.Plans;
using Practice.Store.Rehearsals;

namespace Practice.Service.Rehearsals;

/// <summary>Opens a rehearsal: what is tried, what came back, what it comes to, what might be changed.</summary>
public sealed class OpenRehearsal(
    RaceCases cases,
    PlanStore plans,
    RehearsalStore rehearsals,
    RehearsalCalendars calendars,
    ReadTrials trials,
    RecordReads reads
)
{
    /// <param name="desk">Who acts.</param>
    /// <param name="rehearsalId">The rehearsal.</param>
    /// <param name="verdict">The verdict that proposals follow from; null for the tool's own.</param>
    /// <param name="cancel">Cancels.</param>
    /// <returns>The file; null when the practice has no such rehearsal.</returns>
    public async Task<RehearsalFile?> Run(
        Desk desk,
        Guid rehearsalId,
        TrialVerdict? verdict,
        CancellationToken cancel
    )
    {
        if (
            await rehearsals.Find(desk.PracticeId, rehearsalId, cancel) is not { } onFile
            || await cases.Open(desk, onFile.Value.RaceId, cancel) is not { } raceCase
        )
            return null;
        var rehearsal = onFile.Value;
        await reads.Note(desk, rehearsal.ClientId, cancel);
        var said = await trials.Of(desk, raceCase.Client, cancel);
        var latest = (await plans.Latest(desk.PracticeId, rehearsal.RaceId, cancel))?.Value;
        return new RehearsalFile(
            onFile,
            raceCase.Client,
            raceCase.Race.Value,
            (
                await plans.Find(desk.PracticeId, rehearsal.Details.Part.PlanVersionId, cancel)
            )?.Value,
            latest is { Status: PlanStatus.Withdrawn } ? null : latest,
            rehearsal.Status == RehearsalStatus.Booked
                ? (
                    await calendars.Without(desk, raceCase.Race.Value, rehearsalId, cancel)
                ).JudgeBooked(RehearsalCalendars.Place(rehearsal.Details))
                : [],
            said.Trials.FirstOrDefault(t => t.Rehearsal.Id == rehearsalId)?.Review,
            said,
            rehearsal.Status == RehearsalStatus.FedBack
                ? Proposals(rehearsal, said, latest?.Plan ?? rehearsal.Plan, raceCase, verdict)
                : [],
            await Came(desk, rehearsal.Decision, cancel),
            raceCase.StandingHolds.FirstOrDefault(h => h.Key == WarningSigns.HoldKey),
            !raceCase.Screening.Adjustments.NoWeighing,
            raceCase.Today
        );
    }

    internal static ImmutableArray<Proposal> Proposals(
        Rehearsal rehearsal,
        ClientTrials said,
        RaceWeekPlan plan,
        RaceCase raceCase,
        TrialVerdict? verdict = null
    )
    {
        if (said.Trials.FirstOrDefault(t => t.Rehearsal.Id == rehearsal.Id) is not { } latest)
            return [];
        return Domain.Rehearsals.Proposals.For(
            new()
            {
                Latest = verdict is { } hers
                    ? latest.Review with
                    {
                        Verdict = hers,
                    }
                    : latest.Review,
                Earlier =
                [
                    .. said
                        .Trials.Where(t =>
                            t.Rehearsal.RaceId == rehearsal.RaceId
                            && t.Rehearsal.Id != rehearsal.Id
                            && t.Rehearsal.RunOn <= rehearsal.RunOn
                        )
                        .Select(t => t.Review),
                ],
                Plan = plan,
                Suspects = said.Suspects,
                Adjustments = raceCase.Screening.Adjustments,
                Today = raceCase.Today,
            }
        );
    }

    private async Task<PlanCame?> Came(
        Desk desk,
        ReviewDecision? decision,
        CancellationToken cancel
    ) =>
        decision is { PlanVersionId: { } next, FromVersionId: { } from }
        && await plans.Find(desk.PracticeId, next, cancel) is { Value: var after }
        && await plans.Find(desk.PracticeId, from, cancel) is { Value: var before }
            ? new PlanCame(after, PlanDiff.Of(before.Plan, after.Plan))
            : null;
}
