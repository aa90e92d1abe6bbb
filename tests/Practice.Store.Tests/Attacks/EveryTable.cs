using Npgsql;

namespace Practice.Store.Tests.Attacks;

/// <summary>A column and how to make something for it.</summary>
internal sealed record AnyColumn(string Name, string Type, int? MaxLength)
{
    /// <summary>A value of the column's kind, in SQL. Bytes begin as sealed ones do, since sealed columns take no others.</summary>
    public string Something =>
        Type switch
        {
            "uuid" => "gen_random_uuid()",
            "text" or "character varying" => $"left(md5(random()::text), {MaxLength ?? 32})",
            "bytea" => $@"'\x09f0c9f0'::bytea || decode(md5(random()::text), 'hex')",
            "jsonb" => "'{}'",
            "boolean" => "false",
            "smallint" or "integer" or "bigint" => "(random() * 30000)::int",
            "numeric" => "(random() * 9)::int",
            "date" => "current_date",
            "timestamp with time zone" or "timestamp without time zone" => "now()",
            "interval" => "interval '1 hour'",
            _ => throw new InvalidOperationException($"Nobody has said what goes into a {Type}."),
        };
}

/// <summary>A table that the application can reach, read off the catalog.</summary>
internal sealed record AnyTable(string Name, AnyColumn[] Columns)
{
    /// <summary>What says whose a row is: the practice, or for what hangs on an account, the account.</summary>
    public string? Owner =>
        Columns.Select(c => c.Name).FirstOrDefault(n => n == "practice_id")
        ?? Columns.Select(c => c.Name).FirstOrDefault(n => n == "user_id");

    public string Row(Guid practiceId, Guid accountId)
    {
        var values = Columns.Select(c =>
            c.Name switch
            {
                "practice_id" => $"'{practiceId}'",
                "user_id" => $"'{accountId}'",
                "id" when Name == "account" => $"'{accountId}'",
                _ => c.Something,
            }
        );
        return $"insert into \"{Name}\" ({string.Join(", ", Columns.Select(c => $"\"{c.Name}\""))}) values ({string.Join(", ", values)})";
    }

    /// <summary>Every table of the application, those of later versions too.</summary>
    public static async Task<AnyTable[]> ReadAsync(NpgsqlConnection owner, CancellationToken cancel)
    {
        await using var command = new NpgsqlCommand(
            """
            select table_name::text, column_name::text, data_type::text, character_maximum_length::int
            from information_schema.columns join information_schema.tables using (table_schema, table_name)
            where table_schema = 'public' and table_type = 'BASE TABLE' and is_generated = 'NEVER'
            order by table_name, ordinal_position
            """,
            owner
        );
        await using var reader = await command.ExecuteReaderAsync(cancel);
        var columns = new List<(string Table, AnyColumn Column)>();
        while (await reader.ReadAsync(cancel))
            columns.Add(
                (
                    reader.GetString(0),
                    new(
                        reader.GetString(1),
                        reader.GetString(2),
                        await reader.IsDBNullAsync(3, cancel) ? null : reader.GetInt32(3)
                    )
                )
            );
        return
        [
            .. columns
                .GroupBy(c => c.Table)
                .Select(t => new AnyTable(t.Key, [.. t.Select(c => c.Column)])),
        ];
    }
}
