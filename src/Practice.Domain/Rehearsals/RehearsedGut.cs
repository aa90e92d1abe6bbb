using System.Collections.Immutable;
using Practice.Domain.Course;
using Practice.Domain.Evidence;

namespace Practice.Domain.Rehearsals;

/// <summary>
/// What reviewed rehearsals tell of the gut on the move: amount taken, her verdict, worst gut score. Own rule: the highest rate
/// she passed counts as tolerated; a later trial that did not sit well takes it back to 10 g/h below what
/// <see cref="RunFuelLadder"/> tries next, so that a course never asks for more than the ladder.
/// </summary>
public static class RehearsedGut
{
    private const decimal Rung = 10;
    private const decimal AboutTheRate = 5;
    private const int CleanUpTo = 2;
    private const double LeastHours = 0.75;
    private const decimal MostGPerHour = 150;

    private sealed record Trial(Rehearsal Rehearsal, decimal GPerHour)
    {
        public TrialVerdict Verdict => Rehearsal.Decision!.Verdict;

        public int? Worst => Rehearsal.Feedback!.Symptoms.Select(s => (int?)s.Score).Max();

        public bool IsClean => Verdict == TrialVerdict.Pass && Worst is null or <= CleanUpTo;
    }

    /// <summary>Reads the rehearsals of one client; those that nobody has reviewed do not count.</summary>
    public static GutRecord Of(IEnumerable<Rehearsal> rehearsals)
    {
        ArgumentNullException.ThrowIfNull(rehearsals);
        var trials = rehearsals
            .OrderBy(r => r.RunOn)
            .Select(TrialOf)
            .OfType<Trial>()
            .ToImmutableArray();
        var tolerated = trials.Aggregate((decimal?)null, After);
        return new()
        {
            ToleratedGPerHour = tolerated,
            CleanTrials = trials
                .Reverse()
                .TakeWhile(t =>
                    t.Verdict == TrialVerdict.Pass || t.GPerHour > tolerated + AboutTheRate
                )
                .Count(t => t.IsClean && t.GPerHour >= tolerated - AboutTheRate),
            Trials = [.. trials.Select(Words)],
        };
    }

    // less than three quarters of an hour needs no carbohydrate and tells nothing; more than 150 g/h was mistyped
    private static Trial? TrialOf(Rehearsal rehearsal) =>
        rehearsal
            is {
                Status: RehearsalStatus.Reviewed,
                Feedback.Run: { CarbohydrateGPerHour: > 0 and <= MostGPerHour and var rate } run
            }
        && run.Time?.TotalHours >= LeastHours
            ? new(rehearsal, Math.Round(rate))
            : null;

    private static decimal? After(decimal? tolerated, Trial trial) =>
        trial.Verdict == TrialVerdict.Pass
            ? Math.Max(tolerated ?? 0, trial.GPerHour)
            : Math.Max(
                0,
                Math.Min(
                    tolerated ?? decimal.MaxValue,
                    RunFuelLadder.Next(trial.GPerHour, trial.Verdict) - Rung
                )
            );

    private static BasisInput Words(Trial trial)
    {
        var how = trial.Verdict switch
        {
            TrialVerdict.Pass => "passed",
            TrialVerdict.Adapt => "to adapt",
            _ => "failed",
        };
        var score = trial.Worst is { } worst ? $"worst gut score {worst}" : "no gut score told";
        return new(
            BasisInput.Day(trial.Rehearsal.RunOn),
            $"{BasisInput.Of("", trial.GPerHour, "g/h").Value}, {how}, {score}"
        );
    }
}
