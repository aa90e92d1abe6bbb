using System.Text;
using Npgsql;
using Practice.TestSupport;

namespace Practice.Store.Tests.Attacks;

/// <summary>
/// Raw SQL as the application's role, told to work for one practice, at every table of the catalog: a table that somebody
/// adds is attacked without anybody thinking of it.
/// </summary>
public class RawSqlTests(TestDatabase database) : IClassFixture<TestDatabase>
{
    private static readonly Guid Ours = Guid.CreateVersion7();
    private static readonly Guid Theirs = Guid.CreateVersion7();
    private static readonly Guid OurAccount = Guid.CreateVersion7();
    private static readonly Guid TheirAccount = Guid.CreateVersion7();

    /// <summary>Tables of the installation: they say nothing of anybody.</summary>
    private static readonly string[] OfTheInstallation =
    [
        "__EFMigrationsHistory",
        "data_protection_key",
        "letter_due",
        "registered_practice",
    ];

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task No_table_shows_takes_or_gives_up_a_row_of_another_practice()
    {
        await using var server = NpgsqlDataSource.Create(database.OwnerConnection);
        await using var owner = await server.OpenConnectionAsync(Cancel);
        var all = await AnyTable.ReadAsync(owner, Cancel);
        Assert.Equal(OfTheInstallation, all.Where(t => t.Owner is null).Select(t => t.Name));
        var tables = all.Where(t => t.Owner is not null).ToArray();
        Assert.True(tables.Length > 20);

        // rows for both, whatever they refer to: this is about rows and not about sense
        await RunAsync(owner, "set session_replication_role = replica");
        foreach (var table in tables)
        {
            await RunAsync(owner, table.Row(Ours, OurAccount));
            await RunAsync(owner, table.Row(Theirs, TheirAccount));
        }

        var before = await TheirsAsync(owner, tables);
        await using var attacker = await database.Source.OpenConnectionAsync(Cancel);
        await RunAsync(attacker, $"select set_config('practice.id', '{Ours}', false)");
        var broken = new List<string>();
        foreach (var table in tables)
            broken.AddRange(await AttackAsync(attacker, table));

        Assert.Empty(broken);
        Assert.Equal(before, await TheirsAsync(owner, tables));
    }

    [Fact]
    public async Task A_table_that_nobody_protected_would_be_found()
    {
        await using var server = NpgsqlDataSource.Create(database.OwnerConnection);
        await using var owner = await server.OpenConnectionAsync(Cancel);
        await RunAsync(owner, "create table loose (practice_id uuid not null, words text)");
        await RunAsync(owner, "grant select, insert, update, delete on loose to practice_app");
        try
        {
            var loose = (await AnyTable.ReadAsync(owner, Cancel)).Single(t => t.Name == "loose");
            await RunAsync(owner, loose.Row(Ours, OurAccount));
            await RunAsync(owner, loose.Row(Theirs, TheirAccount));
            await using var attacker = await database.Source.OpenConnectionAsync(Cancel);
            Assert.Equal(8, (await AttackAsync(attacker, loose)).Count);
        }
        finally
        {
            await RunAsync(owner, "drop table loose");
        }
    }

    /// <returns>What went through that should not have.</returns>
    private static async Task<List<string>> AttackAsync(NpgsqlConnection attacker, AnyTable table)
    {
        var broken = new List<string>();
        var (name, owner) = ($"\"{table.Name}\"", table.Owner!);
        var (ours, theirs) = owner == "practice_id" ? (Ours, Theirs) : (OurAccount, TheirAccount);
        var isTheirs = $"where {owner} = '{theirs}'";

        // without a filter, and by name
        if (await CountAsync(attacker, $"select count(*) from {name}") != 1)
            broken.Add($"{table.Name}: a select sees other rows than our own");
        if (await CountAsync(attacker, $"select count(*) from {name} {isTheirs}") != 0)
            broken.Add($"{table.Name}: their row can be read");
        if (await TryAsync(attacker, $"update {name} set {owner} = {owner} {isTheirs}") is > 0)
            broken.Add($"{table.Name}: their row can be updated");
        if (await TryAsync(attacker, $"update {name} set {owner} = {owner}") is > 1)
            broken.Add(
                $"{table.Name}: an update without a filter reaches further than our own row"
            );
        if (await TryAsync(attacker, $"delete from {name} {isTheirs}") is > 0)
            broken.Add($"{table.Name}: their row can be deleted");
        if (await TryAsync(attacker, $"delete from {name}") is > 1)
            broken.Add($"{table.Name}: a delete without a filter reaches further than our own row");
        if (await TryAsync(attacker, table.Row(Theirs, TheirAccount)) is not null)
            broken.Add($"{table.Name}: a row can be planted with them");
        if (
            await TryAsync(
                attacker,
                $"update {name} set {owner} = '{theirs}' where {owner} = '{ours}'"
            )
            is not null
        )
            broken.Add($"{table.Name}: our row can be pushed over to them");
        return broken;
    }

    /// <returns>Rows reached, all of it undone at once; null when it was refused for want of a right.</returns>
    private static async Task<int?> TryAsync(NpgsqlConnection attacker, string sql)
    {
        await using var undone = await attacker.BeginTransactionAsync(Cancel);
        try
        {
            return await RunAsync(attacker, sql);
        }
        catch (PostgresException e) when (e.SqlState == PostgresErrorCodes.InsufficientPrivilege)
        {
            return null;
        }
        catch (PostgresException e)
            when (e.SqlState
                    is PostgresErrorCodes.ForeignKeyViolation
                        or PostgresErrorCodes.CheckViolation
            )
        {
            // it reached a row, which something else held back: of another practice that would be too far
            return
                sql.Contains($"{Theirs}", StringComparison.Ordinal)
                || sql.Contains($"{TheirAccount}", StringComparison.Ordinal)
                ? 1
                : 0;
        }
    }

    /// <summary>Their rows as the owner of the tables sees them.</summary>
    private static async Task<string> TheirsAsync(NpgsqlConnection owner, AnyTable[] tables)
    {
        var rows = new StringBuilder();
        foreach (var table in tables)
        {
            await using var read = Command(
                owner,
                $"select string_agg(t::text, '|') from \"{table.Name}\" t where {table.Owner} in ('{Theirs}', '{TheirAccount}')"
            );
            rows.AppendJoin(' ', table.Name, await read.ExecuteScalarAsync(Cancel)).AppendLine();
        }
        return rows.ToString();
    }

    private static async Task<long> CountAsync(NpgsqlConnection connection, string sql)
    {
        await using var command = Command(connection, sql);
        return (long)(await command.ExecuteScalarAsync(Cancel))!;
    }

    private static async Task<int> RunAsync(NpgsqlConnection connection, string sql)
    {
        await using var command = Command(connection, sql);
        return await command.ExecuteNonQueryAsync(Cancel);
    }

#pragma warning disable CA2100 // the statements are written here, the names come from the catalog
    private static NpgsqlCommand Command(NpgsqlConnection connection, string sql) =>
        new(sql, connection);
#pragma warning restore CA2100
}
