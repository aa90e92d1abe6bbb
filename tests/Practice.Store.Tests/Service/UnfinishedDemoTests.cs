using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;
using NodaTime;
using NodaTime.Testing;
using Practice.Domain.Plans;
using Practice.Service;
using Practice.Service.Demo;
using Practice.Service.Desks;
using Practice.Service.Hosting;
using Practice.Service.Plans;
using Practice.TestSupport;

namespace Practice.Store.Tests.Service;

public class UnfinishedDemoTests(PostgresServer server)
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Plans_that_a_stopped_first_run_left_unmade_are_ordered_again()
    {
        var configuration = new ConfigurationBuilder()
            .AddInMemoryCollection(
                new Dictionary<string, string?>
                {
                    ["ConnectionStrings:Practice"] = await server.NewDatabaseAsync(),
                    ["Demo:Enabled"] = "true",
                }
            )
            .Build();
        await using var database = RunningDatabase.Start(configuration, ".");
        await database.ReadyAsync();
        await using var services = new ServiceCollection()
            .AddLogging()
            .AddPractice(database, PracticeSettings.From(configuration))
            .AddSingleton<IClock>(new FakeClock(TestPractice.Now))
            .BuildServiceProvider();
        var unfinished = services.GetRequiredService<UnfinishedDemo>();
        Assert.Empty(await unfinished.Orders(Cancel));
        await using (var scope = services.CreateAsyncScope())
            await scope.ServiceProvider.GetRequiredService<DemoPractice>().EnsureAsync(Cancel);

        var left = await unfinished.Orders(Cancel);

        Assert.Equal(
            DemoCaseload
                .Clients(services.GetRequiredService<PracticeCalendar>().Today)
                .Count(d => d.Plan != DemoPlan.None),
            left.Length
        );
        // a draft is all the one is to have; the other's menu was not issued yet
        var drafted = left.First(o => o.Client.Plan == DemoPlan.Draft);
        foreach (
            var (desk, race, client) in new[]
            {
                drafted,
                left.First(o => o.Client.Plan == DemoPlan.Issued),
            }
        )
            Assert.IsType<Drafted>(
                await services
                    .GetRequiredService<DraftPlan>()
                    .Run(desk, race, client.Choices, MenuStyle.Vary, Cancel)
            );
        Assert.Equal(
            left.Where(o => o.RaceId != drafted.RaceId),
            await unfinished.Orders(Cancel),
            (a, b) => a.RaceId == b.RaceId
        );
    }
}
