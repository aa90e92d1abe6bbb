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
            | client | no mixture below | no menu below | first menu | menu | above the mixture | above what a menu can cost |
            |---|---|---|---|---|---|---|
            """
        );
        foreach (var client in Enumerable.Range(from, to - from + 1).Select(GeneratedClients.Of))
        {
            var model = MenuModel.ToFill(client.Request);
            long[]? first = null;
            var menu = MenuBuild.Begin(model, (_, better) => first ??= better, default);
            menu.Run(Improvement.UsualSolves(model), (_, _) => { }, CancellationToken.None);
            using var generation = new ColumnGeneration(model, menu.Values);
            var mixed = generation.Bound();
            var whole = new WholeMenus(model, mixed).Bound(
                [.. model.Plates.Select(p => ColumnGeneration.MealOn(p, menu.Values))],
                menu.Cost
            );
            Console.WriteLine(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"| {client.Seed} | {mixed.Value:0} | {whole:0} | {model.CostOf(first!)} | {menu.Cost} | {Above(mixed.Value):0.0} % | {Above(whole):0.0} % |"
                )
            );

            double Above(double bound) => 100 * (menu.Cost - bound) / bound;
        }
    }
}
