using System.Collections.Immutable;

namespace Practice.Domain.Rehearsals;

/// <summary>
/// Which foods are triggers, given trials in which several were eaten at once: each trigger eaten may bring symptoms on
/// by itself, and so may something that is no food.
/// <code>
/// P(no symptoms in trial t | triggers) = (1 - leak_t) x product over triggers of (1 - q)^dose
/// P(triggers | trials) ~ product of priors x product over trials of P(what happened | triggers)
/// </code>
/// Every set of triggers is enumerated, in logarithms. Noisy-OR: Pearl 1988 (from memory); checks N01 to N10 to 1e-5.
/// </summary>
internal sealed class NoisyOr
{
    /// <summary>So many sets of triggers are still enumerated; with more, only sets of few triggers are. 2^18 by own rule.</summary>
    private const double MostSets = 262_144;

    private const int FewTriggers = 3;

    private readonly ImmutableArray<InseparableFoods> _groups;
    private readonly ImmutableArray<FoodTrial> _trials;
    private readonly double _logMiss;
    private readonly int _mostTriggers;

    // chance of each group to hold 0, 1, 2 ... triggers, all divided by e^_scale
    private readonly double[][] _weights;
    private readonly int[] _chosen;
    private double _total;
    private double _scale = double.NegativeInfinity;

    private NoisyOr(
        ImmutableArray<InseparableFoods> groups,
        ImmutableArray<FoodTrial> trials,
        double shows
    )
    {
        (_groups, _trials, _logMiss) = (groups, trials, Math.Log(1 - shows));
        _weights = [.. groups.Select(group => new double[group.Foods.Length + 1])];
        _chosen = new int[groups.Length];
        var sets = groups.Aggregate(1d, (product, group) => product * (group.Foods.Length + 1));
        IsExact = sets <= MostSets;
        _mostTriggers = IsExact ? int.MaxValue : FewTriggers;
    }

    /// <summary>Whether all sets of triggers were weighed, and not only those of at most three.</summary>
    public bool IsExact { get; }

    /// <summary>Probability of what happened, all sets of triggers together; natural logarithm.</summary>
    public double LogEvidence => _scale + Math.Log(_total);

    /// <summary>Chance that a group holds 0, 1, 2 ... triggers, after the trials.</summary>
    public double[] Counts(int group) => [.. _weights[group].Select(w => w / _total)];

    /// <summary>Weighs the sets of triggers.</summary>
    /// <param name="groups">Foods that trials can tell apart.</param>
    /// <param name="trials">The trials, in the order of the groups' doses.</param>
    /// <param name="shows">Chance that a full dose of a trigger brings symptoms, above 0 to below 1.</param>
    public static NoisyOr Weigh(
        ImmutableArray<InseparableFoods> groups,
        ImmutableArray<FoodTrial> trials,
        double shows
    )
    {
        var reckoning = new NoisyOr(groups, trials, shows);
        var calm = trials.Select(t => Math.Log(1 - t.Strains.Leak)).ToArray();
        reckoning.Visit(0, 0, 0, calm);
        return reckoning;
    }

    // depth first through the groups; calm holds, for each trial, the log chance of no symptoms so far
    private void Visit(int group, int triggers, double logPrior, ReadOnlySpan<double> calm)
    {
        if (group == _groups.Length)
        {
            Take(logPrior + LogLikelihood(calm));
            return;
        }
        var foods = _groups[group];
        var most = Math.Min(foods.Foods.Length, _mostTriggers - triggers);
        Span<double> next = stackalloc double[calm.Length];
        calm.CopyTo(next);
        for (var count = 0; count <= most; count++)
        {
            _chosen[group] = count;
            Visit(group + 1, triggers + count, logPrior + Math.Log(foods.CountPrior[count]), next);
            for (var trial = 0; trial < next.Length; trial++)
                next[trial] += _logMiss * foods.Doses[trial];
        }
    }

    private double LogLikelihood(ReadOnlySpan<double> calm)
    {
        var sum = 0d;
        for (var trial = 0; trial < calm.Length; trial++)
            sum += _trials[trial].HadSymptoms ? Math.Log(-double.ExpM1(calm[trial])) : calm[trial];
        return sum;
    }

    private void Take(double logWeight)
    {
        if (logWeight > _scale)
            Rescale(logWeight);
        var weight = Math.Exp(logWeight - _scale);
        _total += weight;
        for (var group = 0; group < _chosen.Length; group++)
            _weights[group][_chosen[group]] += weight;
    }

    private void Rescale(double to)
    {
        var factor = Math.Exp(_scale - to);
        (_scale, _total) = (to, _total * factor);
        foreach (var weights in _weights)
            for (var count = 0; count < weights.Length; count++)
                weights[count] *= factor;
    }
}
