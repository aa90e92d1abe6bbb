using System.Collections.Immutable;
using Practice.Domain.Rehearsals;

namespace Practice.Domain.Tests.Rehearsals;

/// <summary>Foods whose stated chance lies in one tenth.</summary>
/// <param name="From">Lower end of the tenth.</param>
/// <param name="Foods">How many there were.</param>
/// <param name="Stated">Mean of their stated chances.</param>
/// <param name="Found">Part of them that are triggers.</param>
internal sealed record Bin(double From, int Foods, double Stated, double Found);

/// <summary>How things really are; the tool always assumes 0.7 and its own priors.</summary>
/// <param name="Name">In words.</param>
/// <param name="Shows">How often a full dose of a trigger really shows.</param>
/// <param name="PriorFactor">How much more common triggers really are than assumed.</param>
internal sealed record World(string Name, double Shows, double PriorFactor)
{
    public static World AsAssumed { get; } = new("as assumed", 0.7, 1);
}

/// <summary>
/// Made-up clients with known triggers, from a fixed seed: 4 to 9 foods with the priors of the tool, 1 to 6 trials with
/// each food in or out and sometimes half, strains in a fifth of them. A world may differ from what the tool assumes.
/// </summary>
internal static class Calibration
{
    public const int Clients = 12_000;
    public const int WellFilled = 300;

    private const int Seed = 20270418;

    private static readonly double[] Priors = [0.03, 0.10, 0.10, 0.20, 0.30];
    private static readonly double[] Doses = [0, 0, 0.5, 1, 1, 1];

    /// <summary>The study of the world that the tool assumes.</summary>
    public static ImmutableArray<Bin> AsAssumed { get; } = Study(World.AsAssumed);

    /// <summary>Stated against found, by tenths of the stated chance.</summary>
    public static ImmutableArray<Bin> Study(World world)
    {
        var random = new Random(Seed);
        var foods = Enumerable
            .Range(0, Clients)
            .SelectMany(_ => Client(random, world))
            .ToLookup(food => (int)Math.Min(9, food.Stated * 10));
        return
        [
            .. foods
                .OrderBy(tenth => tenth.Key)
                .Select(tenth => new Bin(
                    tenth.Key / 10d,
                    tenth.Count(),
                    tenth.Average(food => food.Stated),
                    tenth.Average(food => food.IsTrigger ? 1 : 0d)
                )),
        ];
    }

    public static double MeanGap(ImmutableArray<Bin> bins) =>
        bins.Sum(b => b.Foods * Math.Abs(b.Stated - b.Found)) / bins.Sum(b => b.Foods);

    public static double WorstGap(ImmutableArray<Bin> bins) =>
        bins.Where(b => b.Foods >= WellFilled).Max(b => Math.Abs(b.Stated - b.Found));

    private static List<(double Stated, bool IsTrigger)> Client(Random random, World world)
    {
        var priors = Enumerable
            .Range(0, random.Next(4, 10))
            .ToImmutableSortedDictionary(i => $"food-{i:00}", _ => Pick(random, Priors));
        var triggers = priors
            .Where(food => random.NextDouble() < food.Value * world.PriorFactor)
            .Select(food => food.Key)
            .ToHashSet();
        var trials = Enumerable
            .Range(0, random.Next(1, 7))
            .Select(_ => Trial(random, priors.Keys, triggers, world.Shows))
            .ToList();
        var suspects = SuspectFoods.Of(
            trials,
            new SuspectAssumptions { Priors = priors.ToImmutableDictionary() }
        );
        return suspects
            .Groups.SelectMany(group => group.Foods)
            .Select(food => (Stated: food.Chance, IsTrigger: triggers.Contains(food.FoodId)))
            .ToList();
    }

    private static FoodTrial Trial(
        Random random,
        IEnumerable<string> foods,
        HashSet<string> triggers,
        double shows
    )
    {
        var doses = foods
            .Select(food => (food, Dose: Pick(random, Doses)))
            .Where(food => food.Dose > 0)
            .ToImmutableDictionary(food => food.food, food => food.Dose);
        var strains = new TrialStrains
        {
            Hot = random.NextDouble() < 0.2,
            IllOrPeriod = random.NextDouble() < 0.2,
        };
        var calm = doses
            .Where(food => triggers.Contains(food.Key))
            .OrderBy(food => food.Key, StringComparer.Ordinal)
            .Aggregate(
                1 - strains.Leak,
                (chance, food) => chance * Math.Pow(1 - shows, food.Value)
            );
        return Trials.Of("", bad: random.NextDouble() >= calm) with
        {
            Strains = strains,
            Doses = doses,
        };
    }

    private static double Pick(Random random, double[] values) =>
        values[random.Next(values.Length)];
}
