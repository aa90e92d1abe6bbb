using System.Collections.Immutable;
using Practice.Domain.Evidence;

namespace Practice.Domain.Rehearsals;

/// <summary>How the risk of symptoms rises with the dose of a food, or of foods always eaten together.</summary>
/// <param name="Foods">Keys of the foods.</param>
/// <param name="Slope">Logits from none to a full dose.</param>
/// <param name="StandardError">Standard error of the slope, logits.</param>
public sealed record DoseSlope(ImmutableArray<string> Foods, double Slope, double StandardError)
{
    /// <summary>Whether the slope is above zero by two standard errors.</summary>
    public bool IsClear => Slope > 2 * StandardError;
}

/// <summary>
/// Risk against dose, once there are six trials. Logistic regression with priors N(-1.5, 1.5²) for the intercept and
/// N(0, 1.5²) for slopes; the number of strains stands beside the foods, scaled to mean 0 and standard deviation 0.5.
/// </summary>
public sealed record DoseResponse
{
    /// <summary>With fewer trials a regression says nothing.</summary>
    public const int LeastTrials = 6;

    internal const double InterceptMean = -1.5;
    internal const double PriorDeviation = 1.5;

    /// <summary>Where the model comes from; the priors are the tool's own.</summary>
    public static ImmutableArray<Source> References { get; } =
    [Sources.Gelman2008, Sources.SuspectAssumptions];

    /// <summary>Logit of symptoms with none of the foods, at the usual strain.</summary>
    public required double Intercept { get; init; }

    /// <summary>Standard error of the intercept, logits.</summary>
    public required double InterceptError { get; init; }

    /// <summary>Slopes, steepest first.</summary>
    public required ImmutableArray<DoseSlope> Slopes { get; init; }

    /// <summary>Slope of the strains, logits for two standard deviations; null when all trials had as many.</summary>
    public required double? StrainSlope { get; init; }

    /// <summary>Risk of symptoms at a dose of one group and none of the others, at the usual strain, 0 to 1.</summary>
    /// <param name="slope">One of <see cref="Slopes"/>.</param>
    /// <param name="dose">0 to 1.</param>
    public double RiskAt(DoseSlope slope, double dose)
    {
        ArgumentNullException.ThrowIfNull(slope);
        return LogisticMap.Chance(Intercept + slope.Slope * dose);
    }

    /// <summary>Fits the trials; null when there are fewer than six. The order of trials does not matter.</summary>
    public static DoseResponse? Of(IEnumerable<FoodTrial> trials)
    {
        var read = trials.OrderBy(t => t.On).ToImmutableArray();
        if (read.Length < LeastTrials)
            return null;
        var foods = read.SelectMany(t => t.Doses.Keys)
            .Distinct()
            .ToImmutableSortedDictionary(f => f, _ => FoodPrior.Usual, StringComparer.Ordinal);
        var groups = InseparableFoods.Group(foods, read);
        var strains = Scaled([.. read.Select(t => (double)t.Strains.Count)]);
        var rows = read.Select(
            (_, i) =>
                (double[])
                    [
                        .. groups.Select(g => g.Doses[i]),
                        .. strains is null ? [] : (double[])[strains[i]],
                    ]
        );
        var fit = LogisticMap.Fit(
            [.. rows],
            [.. read.Select(t => t.HadSymptoms)],
            InterceptMean,
            PriorDeviation
        );
        return new()
        {
            Intercept = fit.Coefficients[0],
            InterceptError = fit.StandardErrors[0],
            Slopes =
            [
                .. groups
                    .Select(
                        (g, i) =>
                            new DoseSlope(
                                g.Foods,
                                fit.Coefficients[i + 1],
                                fit.StandardErrors[i + 1]
                            )
                    )
                    .OrderByDescending(s => s.Slope),
            ],
            StrainSlope = strains is null ? null : fit.Coefficients[^1],
        };
    }

    private static double[]? Scaled(double[] values)
    {
        var mean = values.Average();
        var deviation = Math.Sqrt(values.Average(v => (v - mean) * (v - mean)));
        return deviation == 0 ? null : [.. values.Select(v => (v - mean) / (2 * deviation))];
    }
}
