using System.Globalization;
using BenchmarkDotNet.Running;
using Practice.Benchmarks;
using Practice.Planner;

// planner [clients]       speed and quality of menus on made-up clients, as a table
// bound [from] [to]       how far menus are from what column generation proves to be the best possible
// monolith [clients]      the same menus by one constraint model, for comparison
// explain                 how long "what would help?" takes where limits clash
// menus [from] [to]       menus of made-up clients, to be read
// handouts                papers, by BenchmarkDotNet
// course [races]         course schedules of made-up races, against what ten seconds find
// fuel [races]            the curve of glycogen with its band, for made-up races
// attack [minutes]        forged keys and links at every task, and a crowded pool; ends with 1 when anything got through
// suspects                suspect foods, by BenchmarkDotNet
switch (args.FirstOrDefault())
{
    case "planner":
        PlannerBenchmark.Run(Number(1, 60));
        return 0;
    case "explain":
        ExplainBenchmark.Run();
        return 0;
    case "monolith":
        MonolithBenchmark.Run(Number(1, 10));
        return 0;
    case "bound":
        BoundBenchmark.Run(Number(1, 1), Number(2, 10));
        return 0;
    case "menus":
        foreach (var seed in Enumerable.Range(Number(1, 1), Number(2, 3) - Number(1, 1) + 1))
        {
            var client = GeneratedClients.Of(seed);
            Console.WriteLine(client);
            Console.WriteLine(MenuText.Of(new MenuPlanner().Build(client.Request, null, default)));
        }
        return 0;
    case "handouts":
        BenchmarkRunner.Run<HandoutBenchmark>();
        return 0;
    case "course":
        CourseBenchmark.Run(Number(1, 50));
        return 0;
    case "fuel":
        FuelBenchmark.Run(Number(1, 200));
        return 0;
    case "attack":
        return await AttackBenchmark.Run(Number(1, 10));
    case "suspects":
        BenchmarkRunner.Run<SuspectFoodsBenchmark>();
        return 0;
    default:
        Console.Error.WriteLine(
            "planner [clients] | bound [from] [to] | monolith [clients] | explain | menus [from] [to] | handouts | course [races] | fuel [races] | attack [minutes] | suspects"
        );
        return 1;
}

int Number(int place, int otherwise) =>
    args.Length > place ? int.Parse(args[place], CultureInfo.InvariantCulture) : otherwise;
