using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Foods;
using Practice.Domain.Plans;
using Practice.Domain.Practices;
using Practice.Domain.Quantities;
using Practice.Domain.Rehearsals;
using Practice.Handouts.Blocks;

namespace Practice.Handouts.Content;

/// <summary>What a trial report tells of.</summary>
public sealed record TrialReportCase
{
    /// <summary>The rehearsal, with what was told and decided.</summary>
    public required Rehearsal Rehearsal { get; init; }

    /// <summary>How it reads.</summary>
    public required RehearsalReview Review { get; init; }

    /// <summary>What all trials of the client say.</summary>
    public required SuspectFoods Suspects { get; init; }

    /// <summary>How the plan that came of it differs; null where none did.</summary>
    public PlanDiff? Diff { get; init; }

    /// <summary>Number of the version that came of it.</summary>
    public int? NextVersion { get; init; }

    /// <summary>Name of a food by its key.</summary>
    public required Func<string, string> FoodName { get; init; }

    /// <summary>Whether body mass may be spoken of.</summary>
    public bool MassAllowed { get; init; }

    /// <summary>The day of the report.</summary>
    public required LocalDate Today { get; init; }

    /// <summary>Paper; null for the practice's own.</summary>
    public PaperSize? Paper { get; init; }
}

/// <summary>A rehearsal for the practice's file: what was planned, eaten and felt, and what was decided. Pure.</summary>
public static class TrialReport
{
    private static readonly PaperDates Dates = PaperDates.For("en-GB");

    /// <summary>Builds the report.</summary>
    public static HandoutDoc Build(TrialReportCase trial, PracticeProfile practice)
    {
        ArgumentNullException.ThrowIfNull(trial);
        ArgumentNullException.ThrowIfNull(practice);
        var (rehearsal, header) = (trial.Rehearsal, trial.Rehearsal.Plan.Header);
        var by = rehearsal.Decision?.By ?? "";
        return new()
        {
            Title = $"Trial report: {header.ClientName}, {Dates.Date(rehearsal.RunOn)}",
            Language = "en-GB",
            Author = by.Length > 0 ? by : practice.Name,
            Date = trial.Today,
            Practice = practice,
            Paper = trial.Paper ?? practice.Paper,
            RunningHead = $"{header.ClientName} · trial of {Dates.Date(rehearsal.RunOn)}",
            Foot =
            [
                $"Trial report of {Dates.Date(trial.Today)} · for the practice's file",
                Letterhead.Contact(practice),
            ],
            Blocks =
            [
                new Cover(
                    "Trial report",
                    header.ClientName,
                    [
                        $"{Kind(rehearsal)}, run on {Dates.Full(rehearsal.RunOn)}",
                        $"For {header.RaceName}, {Dates.Day(header.RaceStart.Date)}",
                    ],
                    null
                ),
                InShort(trial),
                .. Decision(trial),
                .. Eaten(trial),
                .. Felt(trial),
                .. Ran(trial),
                .. Foods(trial),
                .. Changes(trial),
            ],
        };
    }

    private static string Kind(Rehearsal rehearsal) =>
        rehearsal.Details.Kind == RehearsalKind.Full ? "Full rehearsal" : "Partial rehearsal";

    private static Facts InShort(TrialReportCase trial)
    {
        var review = trial.Review;
        return new([
            new("Verdict", Verdict(trial.Rehearsal.Decision?.Verdict ?? review.Verdict), By(trial)),
            new(
                "Carbohydrate",
                $"{Rounding.Shown(review.EatenGPerKg, 1)}\u00A0g/kg",
                $"of {Rounding.Shown(review.PlannedGPerKg, 1)} planned, in 24\u00A0h"
            ),
            new(
                "Worst symptom",
                review.Symptoms.PeakSymptom is { } peak ? $"{peak.Score} of 10" : "None",
                review.Symptoms.PeakSymptom is { } felt ? felt.Item.InWords() : ""
            ),
            new(
                "Body mass lost",
                trial.MassAllowed && review.Feedback.MassLoss is { } loss
                    ? $"{Rounding.Shown(loss * 100, 1)}\u00A0%"
                    : "Not weighed"
            ),
        ]);
    }

    private static string By(TrialReportCase trial) =>
        (trial.Rehearsal.Decision is { } decision ? $"by {decision.By}" : "not decided")
        + $"; the rule: {trial.Review.Thresholds.InWords()}";

    private static string Verdict(TrialVerdict verdict) =>
        verdict switch
        {
            TrialVerdict.Pass => "Pass",
            TrialVerdict.Adapt => "Adapt",
            _ => "Fail",
        };

    private static IEnumerable<Block> Decision(TrialReportCase trial)
    {
        if (trial.Rehearsal.Decision is not { } decision)
            yield break;
        yield return new Heading(2, "Decision");
        if (decision.Note.Length > 0)
            yield return new Quote(decision.Note, decision.By);
        yield return new Bullets([
            .. decision
                .Answers.Select(a =>
                    Words.FromString($"{a.Title}: {(a.Accepted ? "accepted" : "not taken")}")
                )
                .DefaultIfEmpty("No change was proposed."),
        ]);
    }

    private static IEnumerable<Block> Eaten(TrialReportCase trial)
    {
        var review = trial.Review;
        yield return new Heading(2, "Planned against eaten");
        foreach (var day in review.Sittings.GroupBy(s => s.Date))
        {
            var bars = day.Select(s => new Bar(
                    Sittings.ShortName(s.Kind, HouseholdUnits.Metric),
                    Apportion.Whole(s.Eaten.CarbohydrateG),
                    Apportion.Whole(s.PlannedCarbohydrateG)
                ))
                .ToImmutableArray();
            yield return new Together([
                new Heading(3, Dates.Day(day.Key)),
                new BarChart(
                    "Carbohydrate eaten at each sitting, g",
                    bars,
                    "planned",
                    $"Bar chart: grams of carbohydrate eaten against planned. {string.Join(", ", day.Zip(bars, (s, b) => $"{Sittings.Name(s.Kind, HouseholdUnits.Metric)} {b.Value} of {b.Aim}"))}."
                ),
                new Bullets([.. day.SelectMany(Other).DefaultIfEmpty("All as planned.")]),
            ]);
        }
        if (review.Unknown > 0)
            yield return new Paragraph(
                $"Portions not told of, counted as nothing: {Rounding.Shown(review.Unknown, 0)}.",
                IsQuiet: true
            );
    }

    private static IEnumerable<Words> Other(SittingReview sitting) =>
        sitting
            .Portions.Select(p =>
                p switch
                {
                    { IsUnknown: true, Planned: { } planned } =>
                        $"{planned.Name}: {(p.Told?.Words is { Length: > 0 } told ? $"“{told}” instead" : "not told")}",
                    { Planned: null, Eaten: { } extra } =>
                        $"{extra.Name}, {Rounding.Shown(extra.Grams, 0)}\u00A0g: on top",
                    { Planned: { } planned, Told: { How: EatenHow.SomethingElse } } =>
                        $"{planned.Name}: {p.Told.Instead!.Name} instead",
                    { Planned: { } planned, Told: { How: EatenHow.NotEaten } } =>
                        $"{planned.Name}: left",
                    { Planned: { } planned, Told: { How: EatenHow.AnotherAmount, Part: not 1 } } =>
                        $"{planned.Name}: {Rounding.Shown(p.Told.Part * 100, 0)}\u00A0% of it",
                    _ => "",
                }
            )
            .Where(words => words.Length > 0)
            .Select(words =>
                Words.FromString($"{Sittings.Name(sitting.Kind, HouseholdUnits.Metric)}: {words}")
            );

    private static IEnumerable<Block> Felt(TrialReportCase trial)
    {
        var (feedback, summary) = (trial.Review.Feedback, trial.Review.Symptoms);
        yield return new Heading(2, "Symptoms");
        yield return new Paragraph(
            $"Each item at its worst: upper {summary.Worst.Upper} of 60, lower {summary.Worst.Lower} of 50, other "
                + $"{summary.Worst.Other} of 30."
        );
        yield return new Bullets([
            .. feedback
                .Symptoms.Where(s => s.Score > 0)
                .Select(s =>
                    Words.FromString(
                        $"{Moment(s)}: {s.Item.InWords()} {Rounding.Shown(s.Score, 0)}"
                    )
                )
                .DefaultIfEmpty("None told."),
        ]);
        if (!feedback.WarningSigns.IsEmpty)
            yield return new Callout(
                IsCaution: true,
                "Warning signs",
                [
                    new Paragraph(
                        $"Told: {string.Join(", ", feedback.WarningSigns.Select(s => s.InWords()))}. A physician must clear them."
                    ),
                ]
            );
        if (feedback.Note.Length > 0)
            yield return new Quote(feedback.Note, trial.Rehearsal.Plan.Header.ClientName);
    }

    private static IEnumerable<Block> Ran(TrialReportCase trial)
    {
        var feedback = trial.Review.Feedback;
        var facts = ToldInShort.Facts(feedback, trial.MassAllowed).ToList();
        if (ToldInShort.Run(feedback) is { } run)
            facts.Insert(0, run);
        if (facts.Count == 0)
            yield break;
        yield return new Heading(2, "The run, drinks and sleep");
        yield return new Paragraph($"{string.Join(", ", facts)}.");
        if (feedback.Run is { Note: { Length: > 0 } note })
            yield return new Quote(note, trial.Rehearsal.Plan.Header.ClientName);
    }

    private static string Moment(Symptom symptom) =>
        symptom.Moment switch
        {
            SymptomMoment.Before => "Before the run",
            SymptomMoment.During =>
                $"{Rounding.Shown(symptom.MinutesIntoRun ?? 0, 0)}\u00A0min into the run",
            SymptomMoment.End => "At the end",
            SymptomMoment.TwoHoursAfter => "Two hours after",
            _ => "The day after",
        };

    private static IEnumerable<Block> Foods(TrialReportCase trial)
    {
        const int shown = 5;
        yield return new Heading(2, "Suspect foods");
        yield return new Bullets([
            .. trial
                .Suspects.Groups.Where(g =>
                    g.WithSymptoms > 0 && g.Foods[0].Label != SuspectLabel.Cleared
                )
                .Take(shown)
                .Select(g =>
                    Words.FromString(
                        g.Explain(trial.FoodName)
                            .Replace($" {SuspectGroup.Disclaimer}", "", StringComparison.Ordinal)
                    )
                )
                .DefaultIfEmpty("No food stands out."),
        ]);
        yield return new Paragraph(
            $"Trials read: {Rounding.Shown(trial.Suspects.Trials, 0)}. {SuspectGroup.Disclaimer}",
            IsQuiet: true
        );
    }

    private static IEnumerable<Block> Changes(TrialReportCase trial)
    {
        if (trial.Diff is not { IsEmpty: false } diff || trial.NextVersion is not { } version)
            yield break;
        yield return new Heading(2, $"What changed in version {Rounding.Shown(version, 0)}");
        yield return new Bullets([
            .. diff.Lines(trial.Rehearsal.Plan.Units).Select(Words.FromString),
        ]);
    }
}
