using Microsoft.EntityFrameworkCore;
using Practice.Store.RowSecurity;

namespace Practice.Store;

/// <summary>The database as the application finds it at start.</summary>
public static class PracticeDatabase
{
    /// <summary>
    /// Brings the database up to date and gives back the connection of the application's own role, which row security
    /// binds. Does nothing to a database that is up to date.
    /// </summary>
    /// <param name="ownerConnection">Connection of the role that owns the tables and may make roles.</param>
    /// <param name="cancel">Cancels.</param>
    public static async Task<string> MigrateAsync(
        string ownerConnection,
        CancellationToken cancel = default
    )
    {
        var application = ApplicationRole.ConnectionFor(ownerConnection);
        await using var source = PracticeDbOptions.Source(ownerConnection);
        await using var db = PracticeDbOptions.Open(source);
        await ApplicationRole.EnsureAsync(source, application, cancel);
        await db.Database.MigrateAsync(cancel);
        return application;
    }
}
