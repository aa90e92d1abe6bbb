using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;
using Npgsql;

namespace Practice.Store.Sealing;

/// <summary>
/// Seals what a migration left as plain JSON in sealed columns, and has the database refuse anything else from then on.
/// The constraint is the mark that a column is done, so this asks one question at each start and works once.
/// It works as the owner of the tables: nobody else may touch the audit or an issued plan.
/// </summary>
internal sealed class SealPlainHealth(HealthSeal seal, NpgsqlConnection owner)
{
    private const int AtOnce = 200;
    private static readonly string Mark =
        $"'\\x{Convert.ToHexStringLower(HealthSeal.Mark)}'::bytea";

    public async Task RunAsync(IModel model, CancellationToken cancel)
    {
        var done = await DoneAsync(cancel);
        var left = model
            .GetEntityTypes()
            .SelectMany(entity => SealedColumn.Of(entity))
            .Where(column => !done.Contains(Constraint(column)));
        foreach (var table in left.GroupBy(column => column.Table))
            await SealAsync(table.Key, [.. table], cancel);
    }

    private async Task SealAsync(string table, SealedColumn[] columns, CancellationToken cancel)
    {
        await using var all = await owner.BeginTransactionAsync(cancel);
        // every practice's rows, and issued plans too: both come back before anybody else sees the table
        await DoAsync(
            $"alter table {table} no force row level security, disable trigger user",
            cancel
        );
        foreach (var column in columns)
        {
            while (await SealSomeAsync(column, cancel) == AtOnce) { }
            await DoAsync(
                $"alter table {table} add constraint {Constraint(column)} check ({IsSealed(column)})",
                cancel
            );
        }

        await DoAsync($"alter table {table} force row level security, enable trigger user", cancel);
        await all.CommitAsync(cancel);
    }

    /// <returns>How many were sealed.</returns>
    private async Task<int> SealSomeAsync(SealedColumn column, CancellationToken cancel)
    {
        var (practice, row) = (column.Practice.GetColumnName(), column.Row.GetColumnName());
        var plain = new List<(Guid Practice, Guid Row, byte[] Json)>();
        await using (
            var some = Command(
                $"select {practice}, {row}, {column.Name} from {column.Table} where not {IsSealed(column)} limit {AtOnce}"
            )
        )
        await using (var reader = await some.ExecuteReaderAsync(cancel))
            while (await reader.ReadAsync(cancel))
                plain.Add((reader.GetGuid(0), reader.GetGuid(1), reader.GetFieldValue<byte[]>(2)));
        foreach (var (practiceId, rowId, json) in plain)
        {
            await using var update = Command(
                $"update {column.Table} set {column.Name} = $1 where {practice} = $2 and {row} = $3"
            );
            update.Parameters.Add(new() { Value = seal.Close(json, column.In(practiceId, rowId)) });
            update.Parameters.Add(new() { Value = practiceId });
            update.Parameters.Add(new() { Value = rowId });
            await update.ExecuteNonQueryAsync(cancel);
        }

        return plain.Count;
    }

    private async Task<HashSet<string>> DoneAsync(CancellationToken cancel)
    {
        await using var ask = Command(
            "select conname::text from pg_constraint where contype = 'c' and conname like '%\\_is\\_sealed'"
        );
        await using var reader = await ask.ExecuteReaderAsync(cancel);
        var names = new HashSet<string>();
        while (await reader.ReadAsync(cancel))
            names.Add(reader.GetString(0));
        return names;
    }

    private static string Constraint(SealedColumn column) =>
        $"{column.Table}_{column.Name["sealed_".Length..]}_is_sealed";

    /// <summary>True of what begins with the mark of data protection; null, which a check lets pass, of nothing.</summary>
    private static string IsSealed(SealedColumn column) =>
        $"substring({column.Name} from 1 for 4) = {Mark}";

    private async Task DoAsync(string statement, CancellationToken cancel)
    {
        await using var command = Command(statement);
        await command.ExecuteNonQueryAsync(cancel);
    }

#pragma warning disable CA2100 // the names in it come from the model
    private NpgsqlCommand Command(string sql) => new(sql, owner);
#pragma warning restore CA2100
}
