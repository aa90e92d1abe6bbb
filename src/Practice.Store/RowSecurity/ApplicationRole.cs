using System.Security.Cryptography;
using System.Text;
using Npgsql;

namespace Practice.Store.RowSecurity;

/// <summary>
/// Makes the application's role and its connection. Its password is derived from the owner's, so that every replica
/// knows it from the one connection string it is given and nothing more has to be kept anywhere.
/// </summary>
internal static class ApplicationRole
{
    /// <summary>The same database, as the application's role.</summary>
    /// <exception cref="PracticeDatabaseException">The owner's connection has no password.</exception>
    public static string ConnectionFor(string ownerConnection)
    {
        var owner = new NpgsqlConnectionStringBuilder(ownerConnection);
        if (string.IsNullOrEmpty(owner.Password))
            throw new PracticeDatabaseException(
                "The connection string of the database has no password. The application's own role derives its from it."
            );
        return new NpgsqlConnectionStringBuilder(ownerConnection)
        {
            Username = Roles.Application,
            Password = Derive(owner.Password),
            // what a connection was told must end with its use, and one connection must serve one user at a time
            NoResetOnClose = false,
            Multiplexing = false,
        }.ConnectionString;
    }

    /// <summary>Makes the role, or gives it its password when that does not fit. Safe to do again, and from two sides at once.</summary>
    public static async Task EnsureAsync(
        NpgsqlDataSource owner,
        string applicationConnection,
        CancellationToken cancel
    )
    {
        if (!await CanConnectAsync(applicationConnection, cancel))
            await MakeAsync(owner, applicationConnection, cancel);
        await RefuseIfMightyAsync(owner, cancel);
    }

    private static async Task<bool> CanConnectAsync(string connection, CancellationToken cancel)
    {
        await using var once = new NpgsqlConnection(
            new NpgsqlConnectionStringBuilder(connection) { Pooling = false }.ConnectionString
        );
        try
        {
            await once.OpenAsync(cancel);
            return true;
        }
        catch (PostgresException e)
            when (e.SqlState
                    is PostgresErrorCodes.InvalidPassword
                        or PostgresErrorCodes.InvalidAuthorizationSpecification
            )
        {
            return false;
        }
    }

    private static async Task MakeAsync(
        NpgsqlDataSource owner,
        string applicationConnection,
        CancellationToken cancel
    )
    {
        var password = new NpgsqlConnectionStringBuilder(applicationConnection).Password!;
        // roles belong to the whole server, locks to one database: two starters are told apart by retrying
        const string make = $"""
            do $$
            begin
                if not exists (select from pg_roles where rolname = '{Roles.Application}') then
                    create role {Roles.Application} login;
                end if;
                execute format('alter role {Roles.Application} login password %L', current_setting('practice.new_password'));
            exception when duplicate_object or unique_violation then
                raise exception using errcode = 'serialization_failure';
            end $$;
            """;
        await using var connection = await owner.OpenConnectionAsync(cancel);
        await using var remember = new NpgsqlCommand(
            "select set_config('practice.new_password', $1, false)",
            connection
        )
        {
            Parameters = { new() { Value = password } },
        };
        await remember.ExecuteNonQueryAsync(cancel);
        for (var left = 5; ; left--)
        {
            try
            {
                await using var command = new NpgsqlCommand(make, connection);
                await command.ExecuteNonQueryAsync(cancel);
                return;
            }
            catch (PostgresException e) when (left > 0 && IsRace(e))
            {
                await Task.Delay(TimeSpan.FromMilliseconds(50), cancel);
            }
            catch (PostgresException e)
                when (e.SqlState == PostgresErrorCodes.InsufficientPrivilege)
            {
                throw new PracticeDatabaseException(
                    $"The database's user may not make the role '{Roles.Application}'. Give it CREATEROLE.",
                    e
                );
            }
        }
    }

    // "tuple concurrently updated" has no code of its own
    private static bool IsRace(PostgresException e) =>
        e.SqlState is PostgresErrorCodes.SerializationFailure or PostgresErrorCodes.InternalError;

    private static async Task RefuseIfMightyAsync(NpgsqlDataSource owner, CancellationToken cancel)
    {
        await using var question = owner.CreateCommand(
            "select rolsuper or rolbypassrls or rolcreaterole or pg_has_role(rolname, current_user, 'member')"
                + " from pg_roles where rolname = $1"
        );
        question.Parameters.Add(new() { Value = Roles.Application });
        if (await question.ExecuteScalarAsync(cancel) is true)
            throw new PracticeDatabaseException(
                $"The role '{Roles.Application}' has rights that lead past row security. Take them from it."
            );
    }

    private static string Derive(string ownerPassword) =>
        Convert.ToHexStringLower(
            HMACSHA256.HashData(Encoding.UTF8.GetBytes(ownerPassword), "practice_app"u8)
        );
}
