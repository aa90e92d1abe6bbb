using System.Diagnostics;
using System.Globalization;
using Practice.Domain.Clients;
using Practice.Domain.Plans;
using Practice.Domain.Targets;
using Practice.Planner;

namespace Practice.Benchmarks;

/// <summary>How long "what would help?" takes, and what it answers, where limits are built to clash.</summary>
internal static class ExplainBenchmark
{
    public static void Run()
    {
        var planner = new MenuPlanner();
        planner.WarmUp();
        Console.WriteLine(
            """
            | eve | processor s | proven | offers |
            |---|---|---|---|
            """
        );
        foreach (var (name, request) in Cases())
        {
            var before = Process.GetCurrentProcess().TotalProcessorTime;
            var conflicts = planner.Explain(request, CancellationToken.None);
            var work = Process.GetCurrentProcess().TotalProcessorTime - before;
            Console.WriteLine(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"| {name} | {work.TotalSeconds:0.0} | {string.Join(", ", conflicts.Select(c => c.Proven ? "yes" : "no"))} | {string.Join("; ", conflicts.SelectMany(c => c.Relaxations).Select(r => r.Text))} |"
                )
            );
        }
    }

    private static IEnumerable<(string Name, MenuRequest Request)> Cases()
    {
        var vegan = new Diet { Pattern = DietPattern.Vegan };
        yield return (
            "92 kg, 12 g/kg, vegan, coeliac, fibre 5 g",
            Eve(92, 12, vegan, isCoeliac: true, l => l with { FibreMaxG = 5 })
        );
        yield return (
            "66 kg, 9 g/kg, vegan, fat 12 g, protein 110 g, fibre 8 g",
            Eve(
                66,
                9,
                vegan,
                isCoeliac: false,
                l => l with { FatMaxG = 12, ProteinMinG = 110, FibreMaxG = 8 }
            )
        );
        yield return (
            "48 kg, 12 g/kg, a main meal of 310 g at most",
            Eve(48, 12, null, isCoeliac: false, l => l with { OccasionWeightMaxG = 310 })
        );
        yield return (
            "100 kg, 12 g/kg, fibre 3 g, fat 5 g",
            Eve(100, 12, null, isCoeliac: false, l => l with { FibreMaxG = 3, FatMaxG = 5 })
        );
        yield return (
            "70 kg, 10 g/kg, no limits that clash",
            Eve(70, 10, null, isCoeliac: false, l => l)
        );
    }

    private static MenuRequest Eve(
        decimal massKg,
        decimal rate,
        Diet? diet,
        bool isCoeliac,
        Func<DayLimits, DayLimits> change
    )
    {
        var request = GeneratedClients.Request(
            massKg,
            new LoadingChoices { CarbohydrateGPerKg = rate, WindowHours = 36 },
            diet,
            GeneratedClients.Adjusted(isCoeliac, avoidsLactose: false)
        );
        var eve = request.Days[^1];
        return request with { Days = [eve with { Limits = change(eve.Limits) }] };
    }
}
