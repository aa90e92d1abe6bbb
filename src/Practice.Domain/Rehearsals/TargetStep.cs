using Practice.Domain.Evidence;

namespace Practice.Domain.Rehearsals;

/// <summary>
/// Steps the carbohydrate target back after a failed full rehearsal: a quarter at first; to the last clean amount after
/// two fails at one amount, even below 10 g/kg. A failed partial says too little of the whole amount. The target is never
/// raised: what sat well is kept. Common practice.
/// </summary>
internal static class TargetStep
{
    private const decimal Quarter = 0.75m;

    // rates nearer than this are one amount
    private const decimal SameAmount = 0.25m;

    public static IEnumerable<Proposal> Back(ProposalCase rehearsed)
    {
        var latest = rehearsed.Latest;
        if (latest.Details.Kind != RehearsalKind.Full || latest.PlannedGPerKg == 0)
            return [];
        return LastClean(rehearsed) is { } clean && FailedBefore(rehearsed)
            ? [ToTheLastClean(rehearsed, clean)]
            : [AQuarter(rehearsed, latest.PlannedGPerKg)];
    }

    private static Proposal AQuarter(ProposalCase rehearsed, decimal rate)
    {
        var to = Math.Round(rate * Quarter, 1);
        return new(
            "step-back",
            new CarbohydrateStep(to),
            rehearsed.Again,
            $"A quarter less: {Proposals.Rate(to)}",
            $"{Proposals.Rate(rate)} did not sit well. "
                + (rehearsed.Again is null ? "No time is left to repeat it." : "Then repeat it."),
            [Sources.Escalation]
        );
    }

    private static Proposal ToTheLastClean(ProposalCase rehearsed, decimal clean) =>
        new(
            "last-clean-amount",
            new CarbohydrateStep(clean),
            null,
            $"Back to the last clean amount: {Proposals.Rate(clean)}",
            $"Two rehearsals at {Proposals.Rate(rehearsed.Latest.PlannedGPerKg)} failed; this much was eaten and sat well.",
            [Sources.Escalation]
        );

    private static bool FailedBefore(ProposalCase rehearsed) =>
        rehearsed.Earlier.Any(r =>
            r.Verdict == TrialVerdict.Fail
            && Math.Abs(r.PlannedGPerKg - rehearsed.Latest.PlannedGPerKg) <= SameAmount
        );

    // what was eaten, not what was planned, and less than what failed
    private static decimal? LastClean(ProposalCase rehearsed) =>
        rehearsed
            .Earlier.Where(r => r.Verdict == TrialVerdict.Pass)
            .OrderBy(r => r.Details.RunOn)
            .Select(r => (decimal?)Math.Floor(10 * Math.Min(r.EatenGPerKg, r.PlannedGPerKg)) / 10)
            .LastOrDefault(r => r > 0 && r < rehearsed.Latest.PlannedGPerKg);
}
