using System.Diagnostics;
using System.Globalization;
using Practice.Domain.Course;
using Practice.Planner.Course;

namespace Practice.Benchmarks;

/// <summary>
/// Course schedules of invented races: when the first one is there, and how far the one after a second is from the best
/// that ten seconds find. Seconds are processor time: other programs keep the machine busy. Limits are judged by the
/// reading, which knows nothing of the planner.
/// </summary>
internal static class CourseBenchmark
{
    private static readonly CourseEffort Long = new(100, 0.1, ShakesBetweenWindows: 12_000);

    public static void Run(int races)
    {
        new CourseScheduler().Schedule(GeneratedCourses.Of(0), null, default);
        var (first, firstWork, whole, atFirst, excess) = (New(), New(), New(), New(), New());
        var (within, proven, broken) = (0, 0, 0);
        for (var race = 1; race <= races; race++)
        {
            var course = GeneratedCourses.Of(race);
            var usual = new Trace();
            var found = new CourseScheduler().Schedule(course, usual, default);
            var took = usual.Work;
            var best = Math.Min(found.Cost, AfterTenSeconds(course));
            var atOne = usual.Seen.Last(s => s.Work <= 1).Cost;
            first.Add(1000 * usual.Seen[0].Seconds);
            firstWork.Add(1000 * usual.Seen[0].Work);
            whole.Add(took);
            atFirst.Add(Percent(usual.Seen[0].Cost, best));
            excess.Add(Percent(atOne, best));
            within += Percent(atOne, best) <= 1 ? 1 : 0;
            proven += found.IsProven ? 1 : 0;
            if (Broken(course, found) is { Length: > 0 } words)
            {
                broken++;
                Console.WriteLine($"race {race} breaks: {words}");
            }
            if (Percent(atOne, best) > 1)
                Console.WriteLine(
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"race {race}: {atOne:0} after a second, {found.Cost:0} at the end, {best:0} after ten"
                    )
                );
        }
        Console.WriteLine(Figures.Head);
        Console.WriteLine(first.Row("first schedule, ms", "0"));
        Console.WriteLine(firstWork.Row("first schedule, processor ms", "0"));
        Console.WriteLine(whole.Row("whole search, processor s"));
        Console.WriteLine(atFirst.Row("first schedule above the best of ten seconds, %", "0.0"));
        Console.WriteLine(excess.Row("after one second above the best of ten, %", "0.0"));
        Console.WriteLine();
        Console.WriteLine($"Within 1 % after a second: {within} of {races}.");
        Console.WriteLine($"Proven to be the best: {proven} of {races}. Limits broken: {broken}.");
    }

    private static double AfterTenSeconds(CourseCase course)
    {
        using var enough = new CancellationTokenSource();
        var trace = new Trace { Enough = enough };
        using var watch = new Timer(_ => trace.Look(), null, 100, 100);
        return new CourseSearch(new CourseModel(course), trace).Run(Long, enough.Token).Cost;
    }

    private static string Broken(CourseCase course, CourseSchedule found) =>
        string.Join(
            ' ',
            CourseReading
                .Of(course with { Sheet = course.Sheet with { Steps = found.Steps } })
                .Warnings.Where(w =>
                    w.Weight == WarningWeight.Stop
                    || w.Rule is CourseRule.Supply or CourseRule.WaterWithFood
                    || w.Text.Contains("ceiling", StringComparison.Ordinal)
                )
                .Select(w => w.Text)
        );

    private static double Percent(double cost, double best) => 100 * (cost - best) / best;

    private static Figures New() => new();

    private sealed class Trace : IProgress<CourseSchedule>
    {
        private readonly Stopwatch _watch = Stopwatch.StartNew();
        private readonly TimeSpan _begun = Process.GetCurrentProcess().TotalProcessorTime;

        public CancellationTokenSource? Enough { get; init; }

        public List<(double Seconds, double Work, double Cost)> Seen { get; } = [];

        public double Work =>
            (Process.GetCurrentProcess().TotalProcessorTime - _begun).TotalSeconds;

        public void Report(CourseSchedule value) =>
            Seen.Add((_watch.Elapsed.TotalSeconds, Work, value.Cost));

        public void Look()
        {
            if (Work > 10)
                Enough?.Cancel();
        }
    }
}
