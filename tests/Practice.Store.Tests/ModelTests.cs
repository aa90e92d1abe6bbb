using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace Practice.Store.Tests;

public class ModelTests
{
    [Fact]
    public void Every_change_of_the_model_has_its_migration()
    {
        using var db = new DesignTimePracticeDb().CreateDbContext([]);
        Assert.False(db.Database.HasPendingModelChanges());
    }

    [Fact]
    public async Task The_application_works_with_the_model_that_is_built_while_its_server_starts()
    {
        await using var store = new ServiceCollection()
            .AddLogging()
            .AddPracticeStore("Host=127.0.0.1;Port=1;Username=x;Password=x")
            .BuildServiceProvider();
        await using var ahead = new DesignTimePracticeDb().CreateDbContext([]);
        await using var working = await store
            .GetRequiredService<IDbContextFactory<PracticeDb>>()
            .CreateDbContextAsync(TestContext.Current.CancellationToken);
        Assert.Same(ahead.Model, working.Model);
    }
}
