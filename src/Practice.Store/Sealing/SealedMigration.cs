using Microsoft.EntityFrameworkCore.Migrations;

namespace Practice.Store.Sealing;

/// <summary>
/// Turns columns of documents or words into columns of bytes with the same as JSON in them. <see cref="SealPlainHealth"/>
/// seals them in the same start: SQL has no keys. Migrations already applied rely on this text: add, never alter.
/// </summary>
internal static class SealedMigration
{
    public static void TurnIntoBytes(
        this MigrationBuilder migration,
        string table,
        params ReadOnlySpan<string> columns
    )
    {
        foreach (var column in columns)
            migration.Sql(
                $"""
                alter table {table} rename column {column} to sealed_{column};
                alter table {table}
                    alter column sealed_{column} drop default,
                    alter column sealed_{column} type bytea
                        using convert_to(to_jsonb(sealed_{column})::text, 'UTF8');
                """
            );
    }
}
