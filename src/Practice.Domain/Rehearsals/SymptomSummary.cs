using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Evidence;

namespace Practice.Domain.Rehearsals;

/// <summary>Sums of scores. Check I04.</summary>
/// <param name="Overall">Gut discomfort, 0 to 10; not part of the total.</param>
/// <param name="Upper">Sum of the upper items, 0 to 60.</param>
/// <param name="Lower">Sum of the lower items, 0 to 50.</param>
/// <param name="Other">Sum of the other items, 0 to 30.</param>
public sealed record SymptomScores(int Overall, int Upper, int Lower, int Other)
{
    /// <summary>Upper, lower and other together, 0 to 140.</summary>
    public int Total => Upper + Lower + Other;

    /// <summary>The sums of some answers; of an item answered twice the worse counts.</summary>
    public static SymptomScores Of(IEnumerable<Symptom> symptoms)
    {
        var worst = symptoms
            .GroupBy(s => s.Item)
            .Select(item => (Category: item.Key.Category(), Score: item.Max(s => s.Score)))
            .ToLookup(item => item.Category, item => item.Score);
        return new(
            worst[SymptomCategory.Overall].Sum(),
            worst[SymptomCategory.Upper].Sum(),
            worst[SymptomCategory.Lower].Sum(),
            worst[SymptomCategory.Other].Sum()
        );
    }
}

/// <summary>
/// What the answers of one trial come to. Decide by <see cref="Peak"/> and <see cref="IsSevere"/>; the sums are for
/// showing. Scores of the lower gut repeat poorly (Gaskell 2019): nothing is decided on one such trial alone.
/// </summary>
public sealed record SymptomSummary
{
    /// <summary>Where the summaries come from.</summary>
    public static ImmutableArray<Source> References { get; } =
    [Sources.Gaskell2019, Sources.Wilson2017, Sources.SymptomAnchors];

    /// <summary>Each item at its worst, summed.</summary>
    public required SymptomScores Worst { get; init; }

    /// <summary>Sums at each moment that was answered, in order of time.</summary>
    public required ImmutableSortedDictionary<SymptomMoment, SymptomScores> ByMoment { get; init; }

    /// <summary>The highest score of any item at any time, 0 to 10.</summary>
    public required int Peak { get; init; }

    /// <summary>The symptom that reached it; null when there was none.</summary>
    public required Symptom? PeakSymptom { get; init; }

    /// <summary>Total score over the run, trapezoids divided by its duration, 0 to 140; null with fewer than two points.</summary>
    public required double? MeanTotalDuringRun { get; init; }

    /// <summary>Whether any item reached 1.</summary>
    public bool HasAny => Peak >= 1;

    /// <summary>Whether any item reached 5.</summary>
    public bool IsSevere => Peak >= Symptom.SevereFrom;

    /// <summary>Whether only the lower gut reached a score: the noisy half of the scale.</summary>
    /// <param name="score">The score, 1 to 10.</param>
    public bool OnlyLowerReaches(int score) => Peak >= score && PeakElsewhere < score;

    /// <summary>The highest score outside the lower gut, 0 to 10.</summary>
    public required int PeakElsewhere { get; init; }

    /// <summary>Summarises the answers of a trial.</summary>
    /// <param name="symptoms">The answers; items not answered count as zero.</param>
    /// <param name="run">Duration of the run, to place its end; null when unknown.</param>
    public static SymptomSummary Of(ImmutableArray<Symptom> symptoms, Duration? run = null)
    {
        var felt = symptoms.Where(s => s.Score > 0).ToList();
        return new()
        {
            Worst = SymptomScores.Of(symptoms),
            ByMoment = symptoms
                .GroupBy(s => s.Moment)
                .ToImmutableSortedDictionary(moment => moment.Key, SymptomScores.Of),
            Peak = felt.Select(s => s.Score).DefaultIfEmpty().Max(),
            PeakSymptom = felt.MaxBy(s => s.Score),
            PeakElsewhere = felt.Where(s => s.Item.Category() != SymptomCategory.Lower)
                .Select(s => s.Score)
                .DefaultIfEmpty()
                .Max(),
            MeanTotalDuringRun = MeanTotal(symptoms, run),
        };
    }

    private static double? MeanTotal(ImmutableArray<Symptom> symptoms, Duration? run)
    {
        var points = symptoms
            .Select(s => (Minute: Minute(s, run), Symptom: s))
            .Where(s => s.Minute is not null)
            .GroupBy(s => s.Minute!.Value, s => s.Symptom)
            .Select(at => (Minute: at.Key, SymptomScores.Of(at).Total))
            .OrderBy(at => at.Minute)
            .ToList();
        var minutes = points.Count < 2 ? 0 : points[^1].Minute - points[0].Minute;
        if (minutes <= 0)
            return null;
        var area = points
            .Zip(points.Skip(1))
            .Sum(leg =>
                (leg.Second.Minute - leg.First.Minute) * (leg.First.Total + leg.Second.Total) / 2d
            );
        return area / minutes;
    }

    // the run starts with the answer given before it
    private static double? Minute(Symptom symptom, Duration? run) =>
        symptom.Moment switch
        {
            SymptomMoment.Before => 0,
            SymptomMoment.During => symptom.MinutesIntoRun,
            SymptomMoment.End => run?.TotalMinutes,
            _ => null,
        };
}
