using Microsoft.Extensions.Configuration;
using Practice.Service.Hosting;

namespace Practice.Store.Tests.Service;

public class RunningDatabaseTests
{
    [Fact]
    public async Task Whoever_waits_for_a_database_that_is_not_to_be_had_is_told_why()
    {
        await using var database = RunningDatabase.Start(
            Naming("Host=127.0.0.1;Username=owner"),
            "."
        );
        var refusal = await Assert.ThrowsAsync<PracticeStartException>(database.ReadyAsync);
        Assert.Contains("no password", refusal.Message, StringComparison.Ordinal);
        Assert.Throws<InvalidOperationException>(() => database.ConnectionString);
    }

    [Fact]
    public void A_certificate_that_cannot_be_read_stops_the_start_at_once()
    {
        var refusal = Assert.Throws<PracticeStartException>(() =>
            RunningDatabase.Start(Naming("", ("Keys:Certificate", "no-such-file.p12")), ".")
        );
        Assert.Contains("no-such-file.p12", refusal.Message, StringComparison.Ordinal);
    }

    private static IConfiguration Naming(string server, params (string Key, string Value)[] more) =>
        new ConfigurationBuilder()
            .AddInMemoryCollection([
                new("ConnectionStrings:Practice", server),
                .. more.Select(m => new KeyValuePair<string, string?>(m.Key, m.Value)),
            ])
            .Build();
}
