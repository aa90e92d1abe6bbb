using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;
using Practice.TestSupport;

namespace Practice.Store.Tests;

public class UpToDateTests(TestDatabase database) : IClassFixture<TestDatabase>
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_database_is_marked_when_all_of_it_is_done_and_no_longer_when_a_migration_is_taken_back()
    {
        await using var owner = PracticeDbOptions.Source(database.OwnerConnection);
        Assert.True(await UpToDate.IsMarkedAsync(owner, Cancel));

        await using (var db = PracticeDbOptions.Open(owner))
        {
            var all = db.GetService<IMigrationsAssembly>().Migrations.Keys.ToList();
            await db.GetService<IMigrator>().MigrateAsync(all[^2], Cancel);
        }
        Assert.False(await UpToDate.IsMarkedAsync(owner, Cancel));

        await PracticeDatabase.MigrateAsync(database.OwnerConnection, Cancel);
        Assert.True(await UpToDate.IsMarkedAsync(owner, Cancel));
    }

    [Fact]
    public async Task What_was_done_in_part_only_is_not_marked()
    {
        await using var owner = PracticeDbOptions.Source(database.OwnerConnection);
        await using (
            var forget = owner.CreateCommand("comment on table \"__EFMigrationsHistory\" is null")
        )
            await forget.ExecuteNonQueryAsync(Cancel);
        Assert.False(await UpToDate.IsMarkedAsync(owner, Cancel));
        await PracticeDatabase.MigrateAsync(database.OwnerConnection, Cancel);
        Assert.True(await UpToDate.IsMarkedAsync(owner, Cancel));
    }
}
