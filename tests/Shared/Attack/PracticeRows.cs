using Npgsql;

namespace Practice.TestSupport.Attack;

/// <summary>All rows of a practice as one text: two that are equal mean that nothing was changed.</summary>
internal static class PracticeRows
{
    public static async Task<string> DigestAsync(NpgsqlDataSource source, Guid practiceId)
    {
        await using var connection = await source.OpenConnectionAsync();
        await Ask(connection, $"select set_config('practice.id', '{practiceId}', false)");
        var words = new List<string>();
        foreach (
            var table in await Ask(
                connection,
                "select table_name::text from information_schema.columns where column_name = 'practice_id' and table_schema = 'public' order by 1"
            )
        )
            words.AddRange(
                await Ask(
                    connection,
                    $"select '{table} ' || count(*) || ' ' || coalesce(md5(string_agg(t::text, '|' order by t::text)), '') from {table} t"
                )
            );
        return string.Join('\n', words);
    }

    private static async Task<List<string>> Ask(NpgsqlConnection connection, string question)
    {
#pragma warning disable CA2100 // the questions are written above
        await using var command = new NpgsqlCommand(question, connection);
#pragma warning restore CA2100
        await using var reader = await command.ExecuteReaderAsync();
        var answers = new List<string>();
        while (await reader.ReadAsync())
            answers.Add(reader.GetString(0));
        return answers;
    }
}
