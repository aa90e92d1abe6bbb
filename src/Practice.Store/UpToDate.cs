using System.Reflection;
using Microsoft.EntityFrameworkCore.Migrations;
using Npgsql;

namespace Practice.Store;

/// <summary>
/// The mark in a database that all of it is up to date, what follows a migration included. It names the newest migration of
/// the program that set it, so that one of the same version has a single question to ask at its start.
/// </summary>
internal static class UpToDate
{
    private static readonly string Newest = typeof(UpToDate)
        .Assembly.GetTypes()
        .Max(type => type.GetCustomAttribute<MigrationAttribute>()?.Id)!;

    public static async Task<bool> IsMarkedAsync(NpgsqlDataSource owner, CancellationToken cancel)
    {
        // the mark alone would outlive a migration taken back
        await using var question = owner.CreateCommand(
            """
            select max(migration_id) = $1 and obj_description('"__EFMigrationsHistory"'::regclass, 'pg_class') = $1
            from "__EFMigrationsHistory"
            """
        );
        question.Parameters.Add(new() { Value = Newest });
        try
        {
            return await question.ExecuteScalarAsync(cancel) is true;
        }
        catch (PostgresException e) when (e.SqlState == PostgresErrorCodes.UndefinedTable)
        {
            return false;
        }
    }

    public static async Task MarkAsync(NpgsqlDataSource owner, CancellationToken cancel)
    {
#pragma warning disable CA2100 // a migration's name, from this program
        await using var command = owner.CreateCommand(
            $"""comment on table "__EFMigrationsHistory" is '{Newest}'"""
        );
#pragma warning restore CA2100
        await command.ExecuteNonQueryAsync(cancel);
    }
}
