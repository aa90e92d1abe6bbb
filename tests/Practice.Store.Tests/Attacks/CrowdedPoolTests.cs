using NodaTime;
using Practice.Store.RowSecurity;
using Practice.TestSupport;
using Practice.TestSupport.Attack;

namespace Practice.Store.Tests.Attacks;

public class CrowdedPoolTests(TestDatabase database) : IClassFixture<TestDatabase>
{
    [Fact]
    public async Task Whoever_gets_a_connection_after_a_failure_or_a_cancellation_sees_the_own_practice_only()
    {
        await using var pool = new CrowdedPool(
            ApplicationRole.ConnectionFor(database.OwnerConnection)
        );
        var report = await pool.RunAsync(
            Duration.FromSeconds(4),
            TestContext.Current.CancellationToken
        );
        Assert.Empty(report.Leaks.Distinct());
        Assert.True(report is { Reads: > 100, Cancelled: > 10, Failed: > 10 }, $"{report}");
    }
}
