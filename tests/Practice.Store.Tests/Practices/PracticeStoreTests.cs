using Microsoft.AspNetCore.DataProtection;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Diagnostics.HealthChecks;
using Practice.Domain.Caseload;
using Practice.Domain.Practices;
using Practice.Store.Practices;
using Practice.TestSupport;

namespace Practice.Store.Tests.Practices;

public class PracticeStoreTests(TestDatabase database) : IClassFixture<TestDatabase>
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_practice_is_founded_read_back_and_changed()
    {
        var practices = database.Get<PracticeStore>();
        Assert.False(await practices.AnyYet(Cancel));
        var founded = Sample.Practice();
        var audit = Sample.Audit(founded.PracticeId, "practice-founded");
        await practices.Found(founded, audit, Cancel);

        Assert.True(await practices.AnyYet(Cancel));
        Assert.Equal([founded.PracticeId], await practices.All(Cancel));
        var read = (await practices.Find(founded.PracticeId, Cancel))!;
        Assert.Equivalent(founded, read.Value, strict: true);

        var changed = read with { Value = read.Value with { Footer = "2 Larch Lane" } };
        var saved = await practices.Save(changed, Sample.Audit(founded.PracticeId), Cancel);
        Assert.IsType<Saved<PracticeProfile>>(saved);
        Assert.Equal(
            "2 Larch Lane",
            (await practices.Find(founded.PracticeId, Cancel))?.Value.Footer
        );
    }

    [Fact]
    public async Task What_one_replica_seals_another_one_opens()
    {
        var sealed_ = Protector().Protect("cookie");
        await using var replica = new ServiceCollection()
            .AddLogging()
            .AddPracticeStore(
                Store.RowSecurity.ApplicationRole.ConnectionFor(database.OwnerConnection)
            )
            .BuildServiceProvider();
        var other = replica.GetRequiredService<IDataProtectionProvider>();
        Assert.Equal("cookie", other.CreateProtector("test").Unprotect(sealed_));

        IDataProtector Protector() =>
            database.Get<IDataProtectionProvider>().CreateProtector("test");
    }

    [Fact]
    public async Task The_database_is_healthy_while_it_answers()
    {
        var report = await database.Get<HealthCheckService>().CheckHealthAsync(Cancel);
        Assert.Equal(HealthStatus.Healthy, report.Status);

        await using var lost = new ServiceCollection()
            .AddLogging()
            .AddPracticeStore("Host=127.0.0.1;Port=1;Username=x;Password=x")
            .BuildServiceProvider();
        report = await lost.GetRequiredService<HealthCheckService>().CheckHealthAsync(Cancel);
        Assert.Equal(HealthStatus.Unhealthy, report.Status);
    }
}
