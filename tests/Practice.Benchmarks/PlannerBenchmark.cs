using System.Collections.Immutable;
using System.Diagnostics;
using Practice.Domain.Plans;
using Practice.Planner;
using Practice.Planner.Model;
using Practice.Planner.Search;

namespace Practice.Benchmarks;

/// <summary>
/// Speed and quality of menus. Clock times are what a person waits; processor times say what the work costs when other
/// programs keep the machine busy.
/// </summary>
internal static class PlannerBenchmark
{
    private static readonly MenuPlanner Planner = new();

    public static void Run(int clients)
    {
        Planner.WarmUp();
        var (first, firstWork, allMet, whole, wholeWork) = (New(), New(), New(), New(), New());
        var (rebalance, rebalanceWork, lines) = (New(), New(), New());
        var done = 0;
        var (metFirst, metInThree, metAtEnd, greedyMet, proven, edits) = (0, 0, 0, 0, 0, 0);
        foreach (var client in Enumerable.Range(1, clients).Select(GeneratedClients.Of))
        {
            var seen = new List<(double Seconds, double Work, ImmutableArray<PlanDay> Days)>();
            var clock = new Clock();
            var menu = Planner.Build(
                client.Request,
                new Reports(p =>
                {
                    if (p.Days is { } days)
                        seen.Add((clock.Seconds, clock.Work, days));
                }),
                CancellationToken.None
            );
            whole.Add(clock.Seconds);
            wholeWork.Add(clock.Work);
            first.Add(seen[0].Seconds);
            firstWork.Add(seen[0].Work);

            var met = seen.FindIndex(s => KeepsAll(client.Request, s.Days));
            metFirst += met == 0 ? 1 : 0;
            metInThree += met >= 0 && seen[met].Work <= 3 ? 1 : 0;
            if (met >= 0)
                allMet.Add(seen[met].Work);
            if (menu.Shortfalls.IsEmpty)
                metAtEnd++;
            else
                Console.WriteLine($"misses: {client}: {menu.Shortfalls[0].Text}");
            greedyMet += KeepsAll(client.Request, Greedy(client.Request)) ? 1 : 0;

            foreach (var edited in Edits(client.Request with { Days = menu.Days }, client.Seed))
            {
                var watch = new Clock();
                var day = Planner.Rebalance(edited, edited.Days[^1].Date, CancellationToken.None);
                rebalance.Add(watch.Seconds);
                rebalanceWork.Add(watch.Work);
                lines.Add(day.Changes.Length);
                proven += day.Proven ? 1 : 0;
                edits++;
            }
            done++;
            if (done % 10 == 0 || done == clients)
                Tell();
        }

        void Tell()
        {
            Console.WriteLine(Figures.Head);
            Console.WriteLine(first.Row("first complete menu, s"));
            Console.WriteLine(firstWork.Row("first complete menu, processor s"));
            Console.WriteLine(allMet.Row("all limits kept, processor s"));
            Console.WriteLine(whole.Row("whole build, s"));
            Console.WriteLine(wholeWork.Row("whole build, processor s"));
            Console.WriteLine(rebalance.Row("rebalance of a day, s"));
            Console.WriteLine(rebalanceWork.Row("rebalance of a day, processor s"));
            Console.WriteLine(lines.Row("lines a rebalance changes", "0"));
            Console.WriteLine();
            Console.WriteLine($"All limits kept: {metFirst} of {done} by the first menu,");
            Console.WriteLine($"{metInThree} within 3 s of work, {metAtEnd} at the end;");
            Console.WriteLine($"{greedyMet} by the cheapest meal at every sitting (greedy).");
            Console.WriteLine($"Rebalance proven to be the least change: {proven} of {edits}.");
            Console.WriteLine();
        }
    }

    private static Figures New() => new();

    private static bool KeepsAll(MenuRequest request, ImmutableArray<PlanDay> days) =>
        Planner.Check(request with { Days = days }).IsEmpty;

    private static ImmutableArray<PlanDay> Greedy(MenuRequest request)
    {
        var model = MenuModel.ToFill(request);
        var meals = MealPool.For(model, CancellationToken.None);
        return MenuWriter.Write(
            model,
            MenuBuild.ValuesOf(model, meals.Select(ofPlate => ofPlate[0]))
        );
    }

    // a portion cut and locked, one taken off, one swapped by hand: what practitioners do
    internal static IEnumerable<MenuRequest> Edits(MenuRequest menu, int seed)
    {
        var random = new Random(seed);
        var day = menu.Days[^1];
        var portions = day
            .Occasions.SelectMany(o => o.Portions.Select(p => (o.Kind, Portion: p)))
            .Where(p => p.Portion.Nutrients.CarbohydrateG > 15)
            .ToList();
        var (kind, cut) = portions[random.Next(portions.Count)];
        yield return Changed(
            kind,
            o => o.Replace(cut, cut with { Steps = cut.Serving.MinSteps, IsLocked = true })
        );
        var (from, gone) = portions[random.Next(portions.Count)];
        yield return Changed(from, o => o.Remove(gone));
        var (at, swapped) = portions[random.Next(portions.Count)];
        var options = Planner.Swaps(menu, new PortionRef(day.Date, at, swapped.FoodId));
        if (!options.IsEmpty)
            yield return Changed(
                at,
                o => o.Replace(swapped, options[^1].Portion with { IsLocked = true })
            );

        MenuRequest Changed(
            Domain.Foods.OccasionKind at,
            Func<ImmutableArray<Portion>, ImmutableArray<Portion>> change
        ) =>
            menu with
            {
                Days = menu.Days.SetItem(
                    menu.Days.Length - 1,
                    day.With(day[at] with { Portions = change(day[at].Portions) })
                ),
            };
    }

    private sealed class Reports(Action<MenuProgress> act) : IProgress<MenuProgress>
    {
        public void Report(MenuProgress value) => act(value);
    }

    private sealed class Clock
    {
        private readonly Stopwatch _watch = Stopwatch.StartNew();
        private readonly TimeSpan _begun = Process.GetCurrentProcess().TotalProcessorTime;

        public double Seconds => _watch.Elapsed.TotalSeconds;

        public double Work =>
            (Process.GetCurrentProcess().TotalProcessorTime - _begun).TotalSeconds;
    }
}
