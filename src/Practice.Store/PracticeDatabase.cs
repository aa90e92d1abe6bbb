using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Configuration;
using Npgsql;
using Practice.Store.Cluster;
using Practice.Store.RowSecurity;

namespace Practice.Store;

/// <summary>The database as the application finds it at start; disposing stops what was started for it.</summary>
public sealed class PracticeDatabase : IAsyncDisposable
{
    private readonly PrivateCluster? _cluster;

    private PracticeDatabase(PrivateCluster? cluster) => _cluster = cluster;

    /// <summary>Connection of the application's own role, which row security binds.</summary>
    public string ConnectionString { get; private init; } = "";

    /// <summary>
    /// Finds the server named in <c>ConnectionStrings:Practice</c>, or starts a private one in <c>Data:Folder</c>, and
    /// brings the database up to date.
    /// </summary>
    /// <param name="configuration">The application's configuration.</param>
    /// <param name="contentRoot">The application's folder, where data lies unless <c>Data:Folder</c> says otherwise.</param>
    /// <param name="cancel">Cancels.</param>
    /// <exception cref="PracticeDatabaseException">There is no database to be had; the message says what to do.</exception>
    public static async Task<PracticeDatabase> StartAsync(
        IConfiguration configuration,
        string contentRoot,
        CancellationToken cancel = default
    )
    {
        if (configuration.GetConnectionString("Practice") is { Length: > 0 } given)
            return new PracticeDatabase(null)
            {
                ConnectionString = await MigrateAsync(given, cancel),
            };

        var folder =
            configuration["Data:Folder"] ?? await DataFolder.ChooseAsync(contentRoot, cancel);
        var cluster = await PrivateCluster.StartAsync(new() { Folder = folder }, cancel);
        try
        {
            return new PracticeDatabase(cluster)
            {
                ConnectionString = await MigrateAsync(cluster.ConnectionString, cancel),
            };
        }
        catch
        {
            await cluster.DisposeAsync();
            throw;
        }
    }

    /// <summary>
    /// Brings the database up to date and gives back the connection of the application's own role. Changes nothing in a
    /// database that is up to date.
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
        await using var turn = await TakeTurnAsync(source, cancel);
        await db.Database.MigrateAsync(cancel);
        return application;
    }

    /// <summary>
    /// Lets one starting process at a time bring the database up to date; the turn ends with the connection. EF's own
    /// lock ends with each migration's transaction, so that between two migrations another process would come in.
    /// </summary>
    private static async Task<NpgsqlConnection> TakeTurnAsync(
        NpgsqlDataSource source,
        CancellationToken cancel
    )
    {
        var connection = await source.OpenConnectionAsync(cancel);
        await using var take = new NpgsqlCommand(
            "select pg_advisory_lock(hashtext('practice-migrations'))",
            connection
        );
        await take.ExecuteNonQueryAsync(cancel);
        return connection;
    }

    /// <summary>Stops the private server when nobody else uses it.</summary>
    public ValueTask DisposeAsync() => _cluster?.DisposeAsync() ?? ValueTask.CompletedTask;
}
