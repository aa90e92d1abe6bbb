using System.Globalization;
using Practice.Planner.Model;
using Practice.Planner.Search;

namespace Practice.Benchmarks;

/// <summary>How good menus are: against what column generation proves that no menu goes below.</summary>
internal static class BoundBenchmark
{
    public static void Run(int from, int to)
    {
        Console.WriteLine(
            """
            | client | bound | first menu | menu | above the bound |
            |---|---|---|---|---|
            """
        );
        foreach (var client in Enumerable.Range(from, to - from + 1).Select(GeneratedClients.Of))
        {
            var model = MenuModel.ToFill(client.Request);
            long[]? first = null;
            var menu = MenuBuild.Begin(model, (_, better) => first ??= better, default);
            menu.Run(Improvement.UsualSolves(model), (_, _) => { }, CancellationToken.None);
            using var generation = new ColumnGeneration(model, menu.Values);
            var bound = generation.Bound();
            Console.WriteLine(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"| {client.Seed} | {bound:0} | {model.CostOf(first!)} | {menu.Cost} | {100 * (menu.Cost - bound) / bound:0.0} % |"
                )
            );
        }
    }
}
