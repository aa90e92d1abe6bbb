using System.Diagnostics;
using System.Globalization;
using Google.OrTools.Sat;
using Practice.Planner.Model;
using Practice.Planner.Search;

namespace Practice.Benchmarks;

/// <summary>
/// What the whole question as one constraint model comes to, with no menu to begin from: the plain way, for comparison. Its
/// limit counts work rather than time, so that a busy machine does not make it look worse than it is.
/// </summary>
internal static class MonolithBenchmark
{
    // about 10 s of one processor of the machine the figures were measured on
    private const string Work = "max_deterministic_time:4.5";

    public static void Run(int clients)
    {
        Console.WriteLine(
            """
            | client | menu | processor s | one model, 1 worker | processor s | one model, 2 workers | processor s |
            |---|---|---|---|---|---|---|
            """
        );
        foreach (var client in Enumerable.Range(1, clients).Select(GeneratedClients.Of))
        {
            var model = MenuModel.ToFill(client.Request);
            var menu = Timed(() =>
            {
                var menu = MenuBuild.Begin(model, (_, _) => { }, CancellationToken.None);
                menu.Run(Improvement.UsualSolves(model), (_, _) => { }, CancellationToken.None);
                return menu.Cost.ToString(CultureInfo.InvariantCulture);
            });
            Console.WriteLine(
                $"| {client.Seed} | {menu} | {Timed(() => Solve(model, 1))} | {Timed(() => Solve(model, 2))} |"
            );
        }
    }

    private static string Timed(Func<string> work)
    {
        var before = Process.GetCurrentProcess().TotalProcessorTime;
        var outcome = work();
        var seconds = (Process.GetCurrentProcess().TotalProcessorTime - before).TotalSeconds;
        return string.Create(CultureInfo.InvariantCulture, $"{outcome} | {seconds:0.0}");
    }

    private static string Solve(MenuModel model, int workers)
    {
        var whole = new PartialModel(
            model,
            new long[model.Variables.Count],
            [.. model.Plates.Select(p => p.Index)],
            leavesOutLastResorts: false
        );
        whole.Model.Model.SolutionHint = null;
        var solver = new CpSolver
        {
            StringParameters =
                $"num_workers:{workers} random_seed:1 {Work} max_time_in_seconds:300",
        };
        return solver.Solve(whole.Model) is CpSolverStatus.Optimal or CpSolverStatus.Feasible
            ? solver.ObjectiveValue.ToString("0", CultureInfo.InvariantCulture)
            : "none found";
    }
}
