using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;
using Npgsql;
using Practice.Store.Cluster;
using Practice.Store.RowSecurity;
using Practice.Store.Sealing;

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
    /// <param name="certificate">What the keys in the database are wrapped with.</param>
    /// <param name="cancel">Cancels.</param>
    /// <exception cref="PracticeDatabaseException">There is no database to be had; the message says what to do.</exception>
    public static async Task<PracticeDatabase> StartAsync(
        IConfiguration configuration,
        string contentRoot,
        KeyCertificate certificate,
        CancellationToken cancel = default
    )
    {
        if (configuration.GetConnectionString("Practice") is { Length: > 0 } given)
            return new PracticeDatabase(null)
            {
                ConnectionString = await MigrateAsync(given, certificate, cancel),
            };

        var folder =
            configuration["Data:Folder"] ?? await DataFolder.ChooseAsync(contentRoot, cancel);
        var cluster = await PrivateCluster.StartAsync(new() { Folder = folder }, cancel);
        try
        {
            return new PracticeDatabase(cluster)
            {
                ConnectionString = await MigrateAsync(
                    cluster.ConnectionString,
                    certificate,
                    cancel
                ),
            };
        }
        catch
        {
            await cluster.DisposeAsync();
            throw;
        }
    }

    /// <summary>Does what else whoever asks first would wait for: a second of processor time. Needs no server.</summary>
    public static void WarmUp() => PracticeDbOptions.WarmUp();

    /// <summary>
    /// Brings the database up to date and gives back the connection of the application's own role. Changes nothing in a
    /// database that is up to date.
    /// </summary>
    /// <param name="ownerConnection">Connection of the role that owns the tables and may make roles.</param>
    /// <param name="cancel">Cancels.</param>
    public static Task<string> MigrateAsync(
        string ownerConnection,
        CancellationToken cancel = default
    ) => MigrateAsync(ownerConnection, KeyCertificate.None, cancel);

    /// <inheritdoc cref="MigrateAsync(string, CancellationToken)" />
    /// <param name="ownerConnection">Connection of the role that owns the tables and may make roles.</param>
    /// <param name="certificate">What the keys in the database are wrapped with.</param>
    /// <param name="cancel">Cancels.</param>
    public static async Task<string> MigrateAsync(
        string ownerConnection,
        KeyCertificate certificate,
        CancellationToken cancel = default
    )
    {
        ArgumentNullException.ThrowIfNull(certificate);
        var application = ApplicationRole.ConnectionFor(ownerConnection);
        await using var source = PracticeDbOptions.Source(ownerConnection);
        await ApplicationRole.EnsureAsync(source, application, cancel);
        // a certificate may be new since the last start
        if (certificate.Current is not null || !await UpToDate.IsMarkedAsync(source, cancel))
            await BringUpToDateAsync(source, certificate, cancel);
        return application;
    }

    private static async Task BringUpToDateAsync(
        NpgsqlDataSource source,
        KeyCertificate certificate,
        CancellationToken cancel
    )
    {
        await using var db = PracticeDbOptions.Open(source);
        await using var turn = await TakeTurnAsync(source, cancel);
        // EF compares model and snapshot before it finds nothing to do
        if ((await db.Database.GetPendingMigrationsAsync(cancel)).Any())
            await db.Database.MigrateAsync(cancel);
        await WrapKeys.RunAsync(db, certificate, cancel);
        await SealHealthAsync(db, source, certificate, cancel);
        await UpToDate.MarkAsync(source, cancel);
    }

    /// <summary>Seals what a migration left plain, with the keys as the application will have them.</summary>
    private static async Task SealHealthAsync(
        PracticeDb db,
        NpgsqlDataSource source,
        KeyCertificate certificate,
        CancellationToken cancel
    )
    {
        await using var keys = new ServiceCollection()
            .AddLogging()
            .AddSingleton(source)
            .AddKeyRing(certificate)
            .BuildServiceProvider();
        await using var owner = await source.OpenConnectionAsync(cancel);
        await new SealPlainHealth(keys.GetRequiredService<HealthSeal>(), owner).RunAsync(
            db.Model,
            cancel
        );
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
