using Practice.Domain.Rehearsals;

namespace Practice.Domain.Tests.Rehearsals;

/// <summary>The noisy-OR as it stands in the books: every set of foods, one by one, in plain products.</summary>
internal static class OneByOne
{
    public static IEnumerable<(string Food, double Chance)> Chances(
        IReadOnlyList<FoodTrial> trials,
        SuspectAssumptions assumptions
    )
    {
        var foods = trials.SelectMany(t => t.Doses.Keys).Distinct().ToList();
        var (all, with) = (0d, new double[foods.Count]);
        for (var set = 0; set < 1 << foods.Count; set++)
        {
            var triggers = foods.Where((_, i) => (set >> i & 1) == 1).ToHashSet();
            var weight = foods
                .Select(f => assumptions.PriorOf(f))
                .Zip(foods, (prior, f) => triggers.Contains(f) ? prior : 1 - prior)
                .Aggregate(1d, (product, p) => product * p);
            foreach (var trial in trials)
            {
                var calm = triggers.Aggregate(
                    1 - trial.Strains.Leak,
                    (product, f) => product * Math.Pow(1 - assumptions.Shows, trial.DoseOf(f))
                );
                weight *= trial.HadSymptoms ? 1 - calm : calm;
            }
            all += weight;
            for (var i = 0; i < foods.Count; i++)
                with[i] += triggers.Contains(foods[i]) ? weight : 0;
        }
        return foods.Select((f, i) => (f, with[i] / all)).ToList();
    }
}
