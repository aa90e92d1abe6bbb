using Npgsql;

namespace Practice.TestSupport;

/// <summary>A database in which some saving waits for a while, as on a slow line.</summary>
public sealed class HeldUp : IAsyncDisposable
{
    private readonly NpgsqlConnection _holder;

    private HeldUp(NpgsqlConnection holder) => _holder = holder;

    internal static async Task<HeldUp> By(string connection, string hold)
    {
        var holder = new NpgsqlConnection(connection);
        await holder.OpenAsync();
        await using var held = new NpgsqlCommand($"begin; {hold}", holder);
        await held.ExecuteNonQueryAsync();
        return new HeldUp(holder);
    }

    /// <summary>Waits until somebody waits.</summary>
    public async Task SomebodyWaits()
    {
        await using var ask = new NpgsqlCommand(
            """
            select exists (
              select from pg_stat_activity
              where wait_event_type = 'Lock' and datname = current_database())
            """,
            _holder
        );
        for (var left = 300; await ask.ExecuteScalarAsync() is not true; left--)
        {
            Assert.True(left > 0, "Nobody wanted to save.");
            await Task.Delay(100);
        }
    }

    /// <summary>Lets everybody save again.</summary>
    public ValueTask DisposeAsync() => _holder.DisposeAsync();
}
