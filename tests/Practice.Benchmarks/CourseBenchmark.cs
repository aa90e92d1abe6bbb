using System.Diagnostics;
using System.Globalization;
using Practice.Domain.Course;
using Practice.Planner.Course;

namespace Practice.Benchmarks;

/// <summary>
/// Course schedules of invented races: when the first one is there, and how far the one after a second is from the one
/// after ten. Ceilings are counted by the reading, which knows nothing of the planner.
/// </summary>
internal static class CourseBenchmark
{
    private static readonly TimeSpan Long = TimeSpan.FromSeconds(10);

    public static void Run(int races)
    {
        new CourseScheduler().WarmUp(GeneratedCourses.Of(0));
        var rows = Enumerable.Range(1, races).Select(Measure).ToList();
        Console.WriteLine(
            "race  first ms  at first  at 1 s  at 10 s  excess %  proven  broken  took s"
        );
        foreach (var row in rows)
            Console.WriteLine(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{row.Race, 4}  {row.FirstMs, 8:0}  {row.AtFirst, 8:0}  {row.AtOne, 6:0}  {row.AtTen, 7:0}  {row.Excess, 8:0.00}  {row.Proven, 6}  {row.Broken, 6}  {row.Took:0.00}"
                )
            );
        Console.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"first: median {Median(rows.Select(r => r.FirstMs)):0} ms, worst {rows.Max(r => r.FirstMs):0} ms; "
                    + $"within 1 % at 1 s: {rows.Count(r => r.Excess <= 1)} of {rows.Count}, worst {rows.Max(r => r.Excess):0.00} %; "
                    + $"proven best in 10 s: {rows.Count(r => r.Proven)}; ceilings broken: {rows.Sum(r => r.Broken)}"
            )
        );
    }

    private sealed record Row(
        int Race,
        double FirstMs,
        double AtFirst,
        double AtOne,
        double AtTen,
        bool Proven,
        double Took,
        int Broken
    )
    {
        public double Excess => 100 * (AtOne - AtTen) / AtTen;
    }

    private static Row Measure(int number)
    {
        var course = GeneratedCourses.Of(number);
        var trace = new Trace();
        var found = new CourseScheduler().Schedule(course, trace, default);
        var took = trace.Watch.Elapsed.TotalSeconds;
        var model = new CourseModel(course);
        var all = new CourseConstraints(model, CountsOf(model, found));
        var ten = all.Solve(1e6, 10 - took, null, default);
        var best = ten is { } answer ? model.CostOf(answer.Counts) : found.Cost;
        var atOne = trace
            .Seen.Where(s => s.Seconds <= 1)
            .Select(s => s.Cost)
            .DefaultIfEmpty(double.PositiveInfinity)
            .Min();
        if (Environment.GetEnvironmentVariable("SHOW") is not null)
        {
            Show(course, found);
            if (ten is { } other)
                Show(course, model.ScheduleOf(other.Counts));
        }
        return new Row(
            number,
            1000 * trace.Seen[0].Seconds,
            trace.Seen[0].Cost,
            atOne,
            Math.Min(best, found.Cost),
            ten?.IsProven ?? false,
            took,
            Broken(course, found)
        );
    }

    private static void Show(CourseCase course, CourseSchedule schedule)
    {
        var plan = CourseReading.Of(
            course with
            {
                Sheet = course.Sheet with { Steps = schedule.Steps },
            }
        );
        Console.WriteLine(
            $"cost {schedule.Cost}: {plan.CarbohydrateGPerHour:0} g/h, {plan.FluidLPerHour:0.00} L/h, caffeine {plan.Total.CaffeineMg:0}; finish {plan.Finish}, aim {plan.Targets.Carbohydrate.Aim} fluid {plan.Targets.Fluid.Low:0.00} {plan.Targets.Fluid.Aim:0.00} {plan.Targets.Fluid.High:0.00}"
        );
        foreach (var place in plan.Steps.GroupBy(s => s.Elapsed))
            Console.WriteLine(
                $"   {CourseClock.Words(place.Key)} {place.First().Km:0.0} {string.Join(" + ", place.Select(s => s.Words))}"
            );
        foreach (var w in plan.Warnings)
            Console.WriteLine($"   ! {w.Weight} {w.Text}");
    }

    private static int Broken(CourseCase course, CourseSchedule found) =>
        CourseReading
            .Of(course with { Sheet = course.Sheet with { Steps = found.Steps } })
            .Warnings.Count(w =>
                w.Weight == WarningWeight.Stop
                || w
                    is { Weight: WarningWeight.Watch }
                        and {
                            Rule: CourseRule.Glucose
                                or CourseRule.Fructose
                                or CourseRule.Supply
                                or CourseRule.WaterWithFood
                        }
            );

    private static double Median(IEnumerable<double> values) =>
        values.Order().ToList() is var sorted ? sorted[sorted.Count / 2] : 0;

    private static long[] CountsOf(CourseModel model, CourseSchedule schedule)
    {
        var counts = new long[model.Offers.Length];
        for (var i = 0; i < counts.Length; i++)
            counts[i] = schedule
                .Steps.Where(s =>
                    s.ProductId == model.Offers[i].Product.Id
                    && s.Km == model.Offers[i].Km
                    && s.IsCarried == model.Offers[i].Station is null
                )
                .Sum(s => s.Count);
        return counts;
    }

    private sealed class Trace : IProgress<CourseSchedule>
    {
        public Stopwatch Watch { get; } = Stopwatch.StartNew();

        public List<(double Seconds, double Cost)> Seen { get; } = [];

        public void Report(CourseSchedule value) =>
            Seen.Add((Watch.Elapsed.TotalSeconds, value.Cost));
    }
}
