using System.Globalization;
using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;
using NodaTime;
using Npgsql;
using Practice.Service;
using Practice.Service.Hosting;
using Practice.TestSupport.Attack;

namespace Practice.Benchmarks;

/// <summary>The attacks of the tests for as long as one likes, on a throw-away cluster: forged calls, then a crowded pool.</summary>
internal static class AttackBenchmark
{
    private const int AtOnce = 2_000;

    /// <param name="minutes">How long, half of it for each.</param>
    /// <returns>0 when nothing got through.</returns>
    public static async Task<int> Run(int minutes)
    {
        var folder = Path.Combine(Path.GetTempPath(), $"practice-attack-{Environment.ProcessId}");
        var configuration = new ConfigurationBuilder()
            .AddInMemoryCollection(
                new Dictionary<string, string?>
                {
                    ["Data:Folder"] = folder,
                    ["Practice:TimeZone"] = "Europe/London",
                }
            )
            .Build();
        try
        {
            await using var database = RunningDatabase.Start(configuration, ".");
            await database.ReadyAsync();
            await using var services = new ServiceCollection()
                .AddLogging()
                .AddPractice(database, PracticeSettings.From(configuration))
                .BuildServiceProvider();
            var half = Duration.FromMinutes(minutes) / 2;
            var got = await Forge(services, half) + await Crowd(database.ConnectionString, half);
            Console.WriteLine(got == 0 ? "Nothing got through." : $"{got} got through.");
            return got == 0 ? 0 : 1;
        }
        finally
        {
            if (Directory.Exists(folder))
                Directory.Delete(folder, recursive: true);
        }
    }

    private static async Task<int> Forge(IServiceProvider services, Duration howLong)
    {
        var victim = await Victim.TakeIn(
            services,
            await Victim.FoundPractice(services, "Up the hill"),
            "Okonjo"
        );
        var attacker = await Victim.TakeIn(
            services,
            await Victim.FoundPractice(services, "Across the road"),
            "Prowler"
        );
        var attack = new ForgedCalls(services, victim, attacker);
        var source = services.GetRequiredService<NpgsqlDataSource>();
        var before = await PracticeRows.DigestAsync(source, victim.Desk.PracticeId);
        var (tried, told) = (0, new HashSet<string>());
        for (
            var end = SystemClock.Instance.GetCurrentInstant() + howLong;
            SystemClock.Instance.GetCurrentInstant() < end;
            tried += AtOnce
        )
            told.UnionWith(await attack.RunAsync(tried, AtOnce, default));
        var isSame = before == await PracticeRows.DigestAsync(source, victim.Desk.PracticeId);
        Say(
            $"{tried} forged calls of {ForgedCalls.Count} tasks: {told.Count} told something, rows {(isSame ? "as before" : "CHANGED")}"
        );
        foreach (var task in told)
            Console.WriteLine($"  {task}");
        return told.Count + (isSame ? 0 : 1);
    }

    private static async Task<int> Crowd(string connection, Duration howLong)
    {
        await using var pool = new CrowdedPool(connection);
        var report = await pool.RunAsync(howLong, default);
        Say(
            $"{report.Reads} readings among {report.Failed} failed and {report.Cancelled} cancelled statements: {report.Leaks.Length} told of another practice"
        );
        return report.Leaks.Length;
    }

    private static void Say(FormattableString words) =>
        Console.WriteLine(words.ToString(CultureInfo.InvariantCulture));
}
