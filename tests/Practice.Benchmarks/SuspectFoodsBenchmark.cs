using System.Collections.Immutable;
using BenchmarkDotNet.Attributes;
using NodaTime;
using Practice.Domain.Rehearsals;

namespace Practice.Benchmarks;

/// <summary>
/// Suspect foods over six trials: 15 foods that the trials tell apart, every set of triggers weighed (2^15); and 40,
/// where only sets of at most three are.
/// </summary>
[MemoryDiagnoser]
public class SuspectFoodsBenchmark
{
    private ImmutableArray<FoodTrial> _trials;

    [Params(15, 40)]
    public int Foods { get; set; }

    [GlobalSetup]
    public void MakeTrials()
    {
        var random = new Random(7);
        _trials =
        [
            .. Enumerable
                .Range(0, 6)
                .Select(trial => new FoodTrial(
                    new LocalDate(2027, 3, 1).PlusWeeks(trial),
                    HadSymptoms: trial % 2 == 0,
                    TrialStrains.None,
                    Enumerable
                        .Range(0, Foods)
                        .ToImmutableDictionary(
                            food => $"food-{food}",
                            _ => 0.1 + 0.9 * random.NextDouble()
                        )
                )),
        ];
    }

    [Benchmark]
    public SuspectFoods Read() => SuspectFoods.Of(_trials);
}
