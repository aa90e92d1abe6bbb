using Npgsql;
using Practice.Store;
using Practice.Store.Cluster;
using Testcontainers.PostgreSql;

namespace Practice.TestSupport;

/// <summary>
/// One PostgreSQL server for a test run: the one named in PRACTICE_TEST_POSTGRES, else a container where a container
/// engine answers, else a private cluster of the application's own kind.
/// </summary>
public sealed class PostgresServer : IAsyncLifetime
{
    private readonly string _prefix = $"practice_test_{Environment.ProcessId}_";
    private IAsyncDisposable? _started;
    private string _server = "";
    private int _databases;

    private string Template => _prefix + "template";

    public async ValueTask InitializeAsync()
    {
        _server = await FindServerAsync();
        await ExecuteAsync($"create database {Template}");
        await PracticeDatabase.MigrateAsync(OwnerConnection(Template));
        // it must have no visitors while it is copied
        await ExecuteAsync($"alter database {Template} with allow_connections false");
    }

    /// <summary>A fresh database with the schema and no rows; the owner's connection.</summary>
    public async Task<string> NewDatabaseAsync()
    {
        var name = _prefix + Interlocked.Increment(ref _databases);
        await ExecuteAsync($"create database {name} template {Template} strategy file_copy");
        return OwnerConnection(name);
    }

    public Task DropAsync(string connection)
    {
        var name = new NpgsqlConnectionStringBuilder(connection).Database;
        return ExecuteAsync($"drop database if exists {name} with (force)");
    }

    /// <summary>The owner's connection to a database of the server. Small pools: many classes run side by side.</summary>
    public string OwnerConnection(string database) =>
        new NpgsqlConnectionStringBuilder(_server)
        {
            Database = database,
            MaxPoolSize = 10,
        }.ConnectionString;

    public async Task ExecuteAsync(string sql)
    {
        var server = new NpgsqlConnectionStringBuilder(_server)
        {
            Database = "postgres",
            Pooling = false,
        };
        await using var connection = new NpgsqlConnection(server.ConnectionString);
        await connection.OpenAsync();
#pragma warning disable CA2100 // names are made above
        await using var command = new NpgsqlCommand(sql, connection);
#pragma warning restore CA2100
        await command.ExecuteNonQueryAsync();
    }

    public async ValueTask DisposeAsync()
    {
        await ExecuteAsync($"drop database if exists {Template}");
        if (_started is not null)
            await _started.DisposeAsync();
    }

    private async Task<string> FindServerAsync()
    {
        if (Environment.GetEnvironmentVariable("PRACTICE_TEST_POSTGRES") is { Length: > 0 } named)
            return named;
        if (await ContainerEngine.AnswersAsync())
        {
            var container = new PostgreSqlBuilder("postgres:17-alpine").Build();
            _started = container;
            await container.StartAsync();
            return container.GetConnectionString();
        }

        var cluster = await TestCluster.StartAsync();
        _started = cluster;
        return cluster.ConnectionString;
    }
}
