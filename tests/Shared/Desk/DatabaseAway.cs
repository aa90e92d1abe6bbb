using Npgsql;

namespace Practice.TestSupport;

/// <summary>A database that throws everybody out and lets nobody in, as a server that restarts does.</summary>
public sealed class DatabaseAway : IAsyncDisposable
{
    private readonly NpgsqlConnection _owner;

    private DatabaseAway(NpgsqlConnection owner) => _owner = owner;

    internal static async Task<DatabaseAway> Begin(string connection)
    {
        var owner = new NpgsqlConnection(connection);
        await owner.OpenAsync();
        var away = new DatabaseAway(owner);
        await away.Admit("0");
        await away.Do(
            "select pg_terminate_backend(pid) from pg_stat_activity where datname = current_database() and pid <> pg_backend_pid()"
        );
        return away;
    }

    public async ValueTask DisposeAsync()
    {
        await Admit("-1");
        await _owner.DisposeAsync();
    }

    // binds the application's role, not the owner
    private Task Admit(string most) =>
        Do(
            $"do $$ begin execute format('alter database %I connection limit {most}', current_database()); end $$"
        );

    private async Task Do(string sql)
    {
        await using var command = new NpgsqlCommand(sql, _owner);
        await command.ExecuteNonQueryAsync();
    }
}
