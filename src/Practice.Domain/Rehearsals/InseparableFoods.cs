using System.Collections.Immutable;

namespace Practice.Domain.Rehearsals;

/// <summary>
/// Foods that were always eaten together in the same doses: no trial tells them apart, so only how many of them are
/// triggers matters. That keeps the reckoning exact and small.
/// </summary>
/// <param name="Foods">Keys of the foods, in order.</param>
/// <param name="Priors">Prior of each, 0 to 1 exclusive.</param>
/// <param name="Doses">Dose of each trial, 0 to 1.</param>
internal sealed record InseparableFoods(
    ImmutableArray<string> Foods,
    ImmutableArray<double> Priors,
    ImmutableArray<double> Doses
)
{
    /// <summary>Chance that exactly 0, 1, 2 ... of them are triggers, before the trials.</summary>
    public double[] CountPrior { get; } = Counts(Priors);

    /// <summary>Chance that a food is one of them when exactly so many are.</summary>
    public double IsAmong(int food, int count) =>
        count == 0
            ? 0
            : Priors[food] * Counts(Priors.RemoveAt(food))[count - 1] / CountPrior[count];

    /// <summary>Groups foods with the same dose in each trial.</summary>
    public static ImmutableArray<InseparableFoods> Group(
        ImmutableSortedDictionary<string, double> priors,
        ImmutableArray<FoodTrial> trials
    ) =>
        [
            .. priors
                .Select(food => (Food: food, Doses: DosesOf(food.Key, trials)))
                .GroupBy(food => string.Join('|', food.Doses.Select(d => Math.Round(d, 3))))
                .Select(same => new InseparableFoods(
                    [.. same.Select(food => food.Food.Key)],
                    [.. same.Select(food => food.Food.Value)],
                    same.First().Doses
                )),
        ];

    private static ImmutableArray<double> DosesOf(string food, ImmutableArray<FoodTrial> trials) =>
        [.. trials.Select(trial => trial.DoseOf(food))];

    // each food multiplies the chances by (1 - p) + p x, where the power of x counts triggers
    private static double[] Counts(ImmutableArray<double> priors)
    {
        var counts = new double[priors.Length + 1];
        counts[0] = 1;
        for (var food = 0; food < priors.Length; food++)
        for (var count = food + 1; count >= 0; count--)
            counts[count] =
                counts[count] * (1 - priors[food])
                + (count > 0 ? counts[count - 1] * priors[food] : 0);
        return counts;
    }
}
