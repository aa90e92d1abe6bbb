using System.Diagnostics;
using Practice.Domain.Clients;
using Practice.Domain.Physiology;

namespace Practice.Benchmarks;

/// <summary>
/// The curve of fuel with its band of 600 guesses, for made-up marathons of 2:30 to 5:30 h cut into kilometres: what
/// opening a race week or printing one waits for, once with the plan and once without.
/// </summary>
internal static class FuelBenchmark
{
    private const double Km = 42.195;
    private const int WarmUp = 20;

    public static void Run(int races)
    {
        var (one, both) = (new Figures(), new Figures());
        for (var number = -WarmUp; number < races; number++)
        {
            var fuel = CaseOf(number);
            var started = Stopwatch.GetTimestamp();
            FuelCurve.Of(fuel);
            var curve = Stopwatch.GetElapsedTime(started).TotalMilliseconds;
            FuelCurve.Of(fuel.WithoutCarbohydrate);
            var story = Stopwatch.GetElapsedTime(started).TotalMilliseconds;
            if (number < 0)
                continue;
            one.Add(curve);
            both.Add(story);
        }
        Console.WriteLine(Figures.Head);
        Console.WriteLine(one.Row("one curve, ms"));
        Console.WriteLine(both.Row("with and without the plan, ms"));
    }

    private static FuelCase CaseOf(int number)
    {
        var random = new Random(number * 17 + 5);
        var (hours, vo2Max) = (2.5 + 3 * random.NextDouble(), 38 + 30 * random.NextDouble());
        return new FuelCase
        {
            MassKg = 45 + 50 * random.NextDouble(),
            Sex = random.Next(2) == 0 ? Sex.Female : Sex.Male,
            Vo2Max = vo2Max,
            Loading = new FuelLoading(
                Hours: 36 + random.Next(36),
                GramsPerKgDay: 8 + random.Next(5)
            ),
            BreakfastGPerKg = 1 + 2 * random.NextDouble(),
            Course = FuelLegs.Running(Km, hours, vo2Max),
            Feeds =
            [
                .. Enumerable.Range(1, (int)(hours * 3)).Select(n => new FuelFeed(n / 3.0, 20)),
            ],
        };
    }
}
