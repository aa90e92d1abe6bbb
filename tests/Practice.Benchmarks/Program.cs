using System.Diagnostics;
using Practice.Benchmarks;
using Practice.Planner;

var from = int.Parse(args[1], System.Globalization.CultureInfo.InvariantCulture);
var to = int.Parse(args[2], System.Globalization.CultureInfo.InvariantCulture);
var planner = new MenuPlanner();
for (var seed = from; seed <= to; seed++)
{
    var client = GeneratedClients.Of(seed);
    var watch = Stopwatch.StartNew();
    var trace = new List<string>();
    var result = planner.Build(
        client.Request,
        new Now(p =>
        {
            if (p.Days is not null)
                trace.Add($"{watch.Elapsed.TotalSeconds:0.00}:{p.Cost:0}");
        }),
        default
    );
    Console.WriteLine(
        $"{client}\n cost {result.Cost:0} in {watch.Elapsed.TotalSeconds:0.00} s; {string.Join(" ", trace.Take(1).Concat(trace.TakeLast(3)))} ({trace.Count})"
    );
    if (args[0] == "show")
        Console.WriteLine(MenuText.Of(result));
    else
        foreach (var s in result.Shortfalls)
            Console.WriteLine("   ! " + s.Text);
}
return 0;

sealed class Now(Action<Practice.Domain.Plans.MenuProgress> act)
    : IProgress<Practice.Domain.Plans.MenuProgress>
{
    public void Report(Practice.Domain.Plans.MenuProgress value) => act(value);
}
