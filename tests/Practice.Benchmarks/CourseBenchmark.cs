using System.Diagnostics;
using System.Globalization;
using Practice.Domain.Course;
using Practice.Planner.Course;

namespace Practice.Benchmarks;

/// <summary>
/// Course schedules of invented races: when the first one is there, and how far the one after a second is from the best
/// that ten seconds of both cores find. Beside the clock stands processor time, by which a busy machine is judged: a
/// second of the two cores that the search uses is two processor seconds. Limits are judged by the reading, which knows
/// nothing of the planner.
/// </summary>
internal static class CourseBenchmark
{
    private const int Cores = 2;

    // as much as ten seconds of both cores can hold; who is quicker is done before
    private static readonly CourseEffort Long = new(100_000, 12_000_000);

    public static void Run(int races)
    {
        new CourseScheduler().Schedule(GeneratedCourses.Of(0), null, default);
        var (first, firstWork, whole, wholeWork) = (New(), New(), New(), New());
        var (atFirst, byClock, byWork, atEnd) = (New(), New(), New(), New());
        var (proven, broken) = (0, 0);
        for (var race = 1; race <= races; race++)
        {
            var course = GeneratedCourses.Of(race);
            var usual = new Trace();
            var found = new CourseScheduler().Schedule(course, usual, default);
            var (took, work) = (usual.Seconds, usual.Work);
            var best = Math.Min(found.Cost, AfterTenSeconds(course));
            var (clocked, worked) = (
                usual.Seen.LastOrDefault(s => s.Seconds <= 1, usual.Seen[0]).Cost,
                usual.Seen.LastOrDefault(s => s.Work <= Cores, usual.Seen[0]).Cost
            );
            first.Add(1000 * usual.Seen[0].Seconds);
            firstWork.Add(1000 * usual.Seen[0].Work);
            whole.Add(took);
            wholeWork.Add(work);
            atFirst.Add(Percent(usual.Seen[0].Cost, best));
            byClock.Add(Percent(clocked, best));
            byWork.Add(Percent(worked, best));
            atEnd.Add(Percent(found.Cost, best));
            proven += found.IsProven ? 1 : 0;
            if (Broken(course, found) is { Length: > 0 } words)
            {
                broken++;
                Console.WriteLine($"race {race} breaks: {words}");
            }
            if (Percent(worked, best) > 1)
                Console.WriteLine(
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"race {race}: {worked:0} after a second of both cores, {found.Cost:0} at the end, {best:0} after ten"
                    )
                );
        }
        Console.WriteLine(Figures.Head);
        Console.WriteLine(first.Row("first schedule, ms", "0"));
        Console.WriteLine(firstWork.Row("first schedule, processor ms", "0"));
        Console.WriteLine(whole.Row("whole search, s"));
        Console.WriteLine(wholeWork.Row("whole search, processor s of both cores"));
        Console.WriteLine(atFirst.Row("first schedule above the best of ten seconds, %", "0.0"));
        Console.WriteLine(byClock.Row("after a second of the clock above it, %", "0.0"));
        Console.WriteLine(byWork.Row("after a second of both cores' work above it, %", "0.0"));
        Console.WriteLine(atEnd.Row("when the search ends above it, %", "0.0"));
        Console.WriteLine();
        Console.WriteLine(
            $"Within 1 %: {byClock.AtMost(1)} of {races} after a second of the clock, {byWork.AtMost(1)} after a second of both cores' work, {atEnd.AtMost(1)} at the end."
        );
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

        public double Seconds => _watch.Elapsed.TotalSeconds;

        public double Work =>
            (Process.GetCurrentProcess().TotalProcessorTime - _begun).TotalSeconds;

        public void Report(CourseSchedule value) => Seen.Add((Seconds, Work, value.Cost));

        public void Look()
        {
            if (Work > 10 * Cores)
                Enough?.Cancel();
        }
    }
}
