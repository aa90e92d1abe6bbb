using Npgsql;
using Practice.Store.RowSecurity;
using Practice.TestSupport;

namespace Practice.Store.Tests.RowSecurity;

public class ApplicationRoleTests(PostgresServer server)
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task An_owner_without_a_password_is_told_that_one_is_needed()
    {
        var e = await Assert.ThrowsAsync<PracticeDatabaseException>(() =>
            PracticeDatabase.MigrateAsync("Host=127.0.0.1;Username=owner", Cancel)
        );
        Assert.Contains("password", e.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_replica_finds_the_same_password_and_it_is_not_the_owners()
    {
        const string owner = "Host=db;Username=owner;Password=secret;Database=practice";
        var first = new NpgsqlConnectionStringBuilder(ApplicationRole.ConnectionFor(owner));
        var second = new NpgsqlConnectionStringBuilder(ApplicationRole.ConnectionFor(owner));
        Assert.Equal(first.Password, second.Password);
        Assert.NotEqual("secret", first.Password);
        Assert.Equal(("practice_app", "practice"), (first.Username, first.Database));
    }

    /// <summary>Managed servers give out no superuser: the owner makes roles and databases, and that is all.</summary>
    [Fact]
    public async Task An_owner_who_may_only_make_roles_can_set_everything_up_twice_and_at_once()
    {
        var name = $"practice_test_plain_{Environment.ProcessId}";
        var given = new NpgsqlConnectionStringBuilder(server.OwnerConnection(name));
        // the server's role for the application goes with this password: other tests use it meanwhile
        await server.ExecuteAsync(
            $"create role {name} login createrole createdb password '{given.Password}'"
        );
        given.Username = name;
        try
        {
            await server.ExecuteAsync($"create database {name} owner {name}");
            await server.ExecuteAsync($"grant practice_app to {name} with admin option");
            var connections = await Task.WhenAll(
                PracticeDatabase.MigrateAsync(given.ConnectionString, Cancel),
                PracticeDatabase.MigrateAsync(given.ConnectionString, Cancel)
            );
            Assert.Single(connections.Distinct());

            await using var owner = NpgsqlDataSource.Create(given.ConnectionString);
            await using var count = owner.CreateCommand("select count(*) from client");
            Assert.Equal(0L, await count.ExecuteScalarAsync(Cancel));
        }
        finally
        {
            NpgsqlConnection.ClearAllPools();
            await server.ExecuteAsync($"drop database if exists {name} with (force)");
            await server.ExecuteAsync($"drop role {name}");
        }
    }
}
