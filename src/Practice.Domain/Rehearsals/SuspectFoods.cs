using System.Collections.Immutable;
using Practice.Domain.Evidence;

namespace Practice.Domain.Rehearsals;

/// <summary>What is assumed of trigger foods. Own rule, and settings.</summary>
public sealed record SuspectAssumptions
{
    /// <summary>The tool's own.</summary>
    public static SuspectAssumptions Default { get; } = new();

    /// <summary>Chance that a full dose of a trigger brings symptoms, above 0 to below 1.</summary>
    public double Shows { get; init; } = 0.7;

    /// <summary>Prior of each food that is not the usual one, by key; above 0 to below 1.</summary>
    public ImmutableDictionary<string, double> Priors { get; init; } =
        ImmutableDictionary<string, double>.Empty;

    /// <summary>Prior of a food, above 0 to below 1.</summary>
    public double PriorOf(string foodId) => Priors.GetValueOrDefault(foodId, FoodPrior.Usual);
}

/// <summary>
/// What a client's trials say about the foods eaten in them: a pattern in few trials, not an allergy test. The chance of
/// each food is exact for the assumptions made; the assumptions are ours.
/// </summary>
public sealed record SuspectFoods
{
    /// <summary>Foods that can be told apart, most suspect first; foods always eaten together stand as one.</summary>
    public required ImmutableArray<SuspectGroup> Groups { get; init; }

    /// <summary>Trials read.</summary>
    public required int Trials { get; init; }

    /// <summary>Whether every set of triggers was weighed; otherwise only sets of at most three, where foods are many.</summary>
    public required bool IsExact { get; init; }

    /// <summary>Natural logarithm of the probability of what happened, under the assumptions.</summary>
    public required double LogEvidence { get; init; }

    /// <summary>Where the model and its numbers come from.</summary>
    public static ImmutableArray<Source> References { get; } =
    [Sources.Pearl1988, Sources.SuspectAssumptions, Sources.SuspectWords];

    /// <summary>Chance of a food to be a trigger, 0 to 1; null when no trial had it.</summary>
    public double? ChanceOf(string foodId) => GroupOf(foodId)?.ChanceOf(foodId);

    /// <summary>The group that a food belongs to; null when no trial had it.</summary>
    public SuspectGroup? GroupOf(string foodId) =>
        Groups.FirstOrDefault(group => group.Find(foodId) is not null);

    /// <summary>Reads trials. The order of trials and foods does not matter.</summary>
    /// <param name="trials">The trials; none is allowed and teaches nothing.</param>
    /// <param name="assumptions">Priors and how often a trigger shows.</param>
    /// <exception cref="ArgumentOutOfRangeException">A chance is not above 0 and below 1.</exception>
    public static SuspectFoods Of(
        IEnumerable<FoodTrial> trials,
        SuspectAssumptions? assumptions = null
    )
    {
        assumptions ??= SuspectAssumptions.Default;
        var read = trials.ToImmutableArray();
        var priors = read.SelectMany(trial => trial.Doses)
            .Where(food => food.Value > 0)
            .Select(food => food.Key)
            .Distinct()
            .ToImmutableSortedDictionary(
                food => food,
                food => Chance(assumptions.PriorOf(food)),
                StringComparer.Ordinal
            );
        var groups = InseparableFoods.Group(priors, read);
        var reckoning = NoisyOr.Weigh(groups, read, Chance(assumptions.Shows));
        return new()
        {
            Groups =
            [
                .. groups
                    .Select((group, i) => SuspectGroup.Of(group, reckoning.Counts(i), read))
                    .OrderByDescending(group => group.Foods[0].Chance)
                    .ThenBy(group => group.Foods[0].FoodId, StringComparer.Ordinal),
            ],
            Trials = read.Length,
            IsExact = reckoning.IsExact,
            LogEvidence = reckoning.LogEvidence,
        };
    }

    private static double Chance(double chance) =>
        chance is > 0 and < 1
            ? chance
            : throw new ArgumentOutOfRangeException(
                nameof(chance),
                chance,
                "A chance lies between 0 and 1."
            );
}
