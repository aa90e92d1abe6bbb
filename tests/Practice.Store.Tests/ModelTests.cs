using Microsoft.EntityFrameworkCore;

namespace Practice.Store.Tests;

public class ModelTests
{
    [Fact]
    public void Every_change_of_the_model_has_its_migration()
    {
        using var db = new DesignTimePracticeDb().CreateDbContext([]);
        Assert.False(db.Database.HasPendingModelChanges());
    }
}
