using System.Globalization;
using Google.OrTools.Sat;
using Practice.Planner.Model;
using Practice.Planner.Search;

namespace Practice.Benchmarks;

/// <summary>How good menus are: against the bound of column generation, and against one monolithic constraint model.</summary>
internal static class BoundBenchmark
{
    public static void Run(int clients)
    {
        Console.WriteLine(
            """
            | client | bound | first menu | menu | above the bound | whole model, 2 workers, 10 s |
            |---|---|---|---|---|---|
            """
        );
        foreach (var client in Enumerable.Range(1, clients).Select(GeneratedClients.Of))
        {
            var model = MenuModel.ToFill(client.Request);
            var first = 0L;
            var menu = MenuBuild.Begin(model, (_, cost) => first = cost, CancellationToken.None);
            menu.Run(Improvement.UsualSolves(model), (_, _) => { }, CancellationToken.None);
            var bound = new ColumnGeneration(model, menu.Values).Bound();
            Console.WriteLine(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"| {client.Seed} | {bound:0} | {first} | {menu.Cost} | {100 * (menu.Cost - bound) / menu.Cost:0.0} % | {Monolith(model)} |"
                )
            );
        }
    }

    private static string Monolith(MenuModel model)
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
            StringParameters = "num_workers:2 random_seed:1 max_time_in_seconds:10",
        };
        var status = solver.Solve(whole.Model);
        return status is CpSolverStatus.Optimal or CpSolverStatus.Feasible
            ? solver.ObjectiveValue.ToString("0", CultureInfo.InvariantCulture)
            : "none found";
    }
}
