using Microsoft.EntityFrameworkCore;
using Npgsql;
using Practice.Store.Clients;

namespace Practice.Store.Tests.RowSecurity;

/// <summary>What a forgotten filter, or worse, would find: raw SQL as the application's role.</summary>
public class RowSecurityTests(TwoPractices practices) : IClassFixture<TwoPractices>
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_query_without_a_filter_sees_the_own_practice_only()
    {
        await using var connection = await OpenAsync(practices.Ours.PracticeId);
        Assert.Equal(
            [practices.OurClient.Id],
            await ReadAsync<Guid>(connection, "select id from client")
        );
        Assert.Equal(
            ["Larch House"],
            await ReadAsync<string>(connection, "select name from practice")
        );
    }

    [Fact]
    public async Task A_connection_that_was_told_no_practice_sees_nothing()
    {
        await using var connection = await OpenAsync(null);
        foreach (var table in await TablesAsync())
            Assert.Equal([0L], await ReadAsync<long>(connection, $"select count(*) from {table}"));
    }

    [Fact]
    public async Task A_row_cannot_be_written_into_another_practice()
    {
        await using var connection = await OpenAsync(practices.Ours.PracticeId);
        var steal =
            $"insert into audit_entry (id, practice_id, at, by, what, detail) values (gen_random_uuid(), '{practices.Theirs.PracticeId}', now(), '', '', '')";
        await RefusedAsync(connection, steal);
        await RefusedAsync(
            connection,
            $"update client set practice_id = '{practices.Theirs.PracticeId}'"
        );
    }

    [Fact]
    public async Task Rows_of_another_practice_cannot_be_changed_or_removed()
    {
        await using var connection = await OpenAsync(practices.Ours.PracticeId);
        var theirs = $"where id = '{practices.TheirClient.Id}'";
        Assert.Equal(0, await RunAsync(connection, $"update client set given_name = 'x' {theirs}"));
        Assert.Equal(0, await RunAsync(connection, $"delete from client {theirs}"));
    }

    [Theory]
    [InlineData("update audit_entry set by = 'nobody'")]
    [InlineData("delete from audit_entry")]
    [InlineData("truncate audit_entry")]
    [InlineData("delete from practice")]
    [InlineData("alter table client disable row level security")]
    [InlineData("drop policy own_practice on client")]
    [InlineData("create table extra (id int)")]
    [InlineData("set role postgres")]
    public async Task The_application_has_no_right_to(string forbidden)
    {
        await using var connection = await OpenAsync(practices.Ours.PracticeId);
        var refusal = await Assert.ThrowsAsync<PostgresException>(() =>
            RunAsync(connection, forbidden)
        );
        Assert.Contains(
            refusal.SqlState,
            new[]
            {
                PostgresErrorCodes.InsufficientPrivilege,
                PostgresErrorCodes.InvalidParameterValue,
            }
        );
    }

    [Fact]
    public async Task Every_table_that_bears_a_practice_is_forced_to_keep_practices_apart()
    {
        await using var owner = NpgsqlDataSource.Create(practices.Database.OwnerConnection);
        await using var connection = await owner.OpenConnectionAsync(Cancel);
        var loose = await ReadAsync<string>(
            connection,
            """
            select c.relname::text from pg_class c join pg_namespace n on n.oid = c.relnamespace
            where n.nspname = 'public' and c.relkind in ('r', 'p')
                and c.relname not in ('__EFMigrationsHistory', 'registered_practice', 'data_protection_key', 'letter_due')
                and not (c.relrowsecurity and c.relforcerowsecurity
                    and exists (select from pg_policy p where p.polrelid = c.oid))
            """
        );
        Assert.Empty(loose);
        Assert.Contains("client", await TablesAsync());
    }

    [Fact]
    public async Task Pooled_connections_under_load_carry_nothing_from_one_practice_to_the_other()
    {
        var clients = practices.Database.Get<ClientStore>();
        await Parallel.ForEachAsync(
            Enumerable.Range(0, 400),
            new ParallelOptions { MaxDegreeOfParallelism = 16, CancellationToken = Cancel },
            async (i, cancel) =>
            {
                var (own, other) =
                    i % 2 == 0
                        ? (practices.OurClient, practices.TheirClient)
                        : (practices.TheirClient, practices.OurClient);
                if (i % 5 == 0)
                {
                    // a connection straight from the pool, after somebody else had it
                    await using var raw = await practices.Database.Source.OpenConnectionAsync(
                        cancel
                    );
                    Assert.Empty(await ReadAsync<Guid>(raw, "select id from client"));
                }

                Assert.NotNull(await clients.Find(own.PracticeId, own.Id, cancel));
                Assert.Null(await clients.Find(own.PracticeId, other.Id, cancel));
            }
        );
    }

    [Fact]
    public async Task A_context_whose_filters_are_switched_off_still_sees_the_own_practice_only()
    {
        await using var db = practices
            .Database.Get<IDbContextFactory<PracticeDb>>()
            .Open(practices.Ours.PracticeId);
        var all = await db.Clients.IgnoreQueryFilters().Select(c => c.Id).ToListAsync(Cancel);
        Assert.Equal([practices.OurClient.Id], all);
    }

    private async Task<List<string>> TablesAsync()
    {
        await using var owner = NpgsqlDataSource.Create(practices.Database.OwnerConnection);
        await using var connection = await owner.OpenConnectionAsync(Cancel);
        return await ReadAsync<string>(
            connection,
            "select relname::text from pg_class where relkind = 'r' and relforcerowsecurity"
        );
    }

    private async Task<NpgsqlConnection> OpenAsync(Guid? practiceId)
    {
        var connection = await practices.Database.Source.OpenConnectionAsync(Cancel);
        if (practiceId is not null)
            await RunAsync(connection, $"select set_config('practice.id', '{practiceId}', false)");
        return connection;
    }

    private static async Task RefusedAsync(NpgsqlConnection connection, string sql)
    {
        var refusal = await Assert.ThrowsAsync<PostgresException>(() => RunAsync(connection, sql));
        Assert.Equal(PostgresErrorCodes.InsufficientPrivilege, refusal.SqlState);
        Assert.Contains("row-level security", refusal.MessageText, StringComparison.Ordinal);
    }

#pragma warning disable CA2100 // the statements are written in this file
    private static async Task<int> RunAsync(NpgsqlConnection connection, string sql)
    {
        await using var command = new NpgsqlCommand(sql, connection);
        return await command.ExecuteNonQueryAsync(Cancel);
    }

    private static async Task<List<T>> ReadAsync<T>(NpgsqlConnection connection, string sql)
    {
        await using var command = new NpgsqlCommand(sql, connection);
        await using var reader = await command.ExecuteReaderAsync(Cancel);
        var rows = new List<T>();
        while (await reader.ReadAsync(Cancel))
            rows.Add(reader.GetFieldValue<T>(0));
        return rows;
    }
#pragma warning restore CA2100
}
