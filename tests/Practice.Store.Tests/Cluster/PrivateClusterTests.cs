using System.Diagnostics;
using Npgsql;
using Practice.Store.Cluster;
using Practice.TestSupport;

namespace Practice.Store.Tests.Cluster;

public sealed class PrivateClusterTests : IDisposable
{
    private readonly string _place = Directory
        .CreateDirectory(Path.Combine(TestCluster.Place(), $"practice-cluster-{Guid.NewGuid():n}"))
        .FullName;

    private string Folder => Path.Combine(_place, "a", "b");

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Rows_are_there_again_after_a_restart()
    {
        await using (var first = await StartAsync())
            await RunAsync(first, "create table kept as select 42 as answer");

        await using var second = await StartAsync();
        Assert.Equal(42, await RunAsync(second, "select answer from kept"));
    }

    [Fact]
    public async Task It_is_seen_by_this_machine_only_and_asks_for_a_password_that_only_its_user_can_read()
    {
        await using var cluster = await StartAsync();
        Assert.Equal("127.0.0.1", await RunAsync(cluster, "show listen_addresses"));
        Assert.Equal("", await RunAsync(cluster, "show unix_socket_directories"));

        var stranger = new NpgsqlConnectionStringBuilder(cluster.ConnectionString)
        {
            Password = "guess",
        };
        await using var connection = new NpgsqlConnection(stranger.ConnectionString);
        var refusal = await Assert.ThrowsAsync<PostgresException>(() =>
            connection.OpenAsync(Cancel)
        );
        Assert.Equal(PostgresErrorCodes.InvalidPassword, refusal.SqlState);

        if (!OperatingSystem.IsWindows())
            Assert.Equal(
                UnixFileMode.UserRead | UnixFileMode.UserWrite,
                File.GetUnixFileMode(new ClusterFolder(Folder).Password)
            );
    }

    [Fact]
    public async Task A_second_program_joins_and_the_last_one_out_stops_it()
    {
        var first = await StartAsync();
        var second = await StartAsync();
        Assert.Equal(first.ProcessId, second.ProcessId);

        await first.DisposeAsync();
        Assert.Equal(1, await RunAsync(second, "select 1"));

        await second.DisposeAsync();
        Assert.Null(Postmaster.Running(new ClusterFolder(Folder).Data));
    }

    [Fact]
    public async Task Programs_that_start_at_the_same_moment_share_one_server()
    {
        var clusters = await Task.WhenAll(StartAsync(), StartAsync(), StartAsync());
        Assert.Single(clusters.Select(c => c.ProcessId).Distinct());
        foreach (var cluster in clusters)
            await cluster.DisposeAsync();
    }

    [Fact]
    public async Task A_server_whose_program_was_killed_is_taken_over_and_stopped()
    {
        await (await StartAsync()).DisposeAsync();
        var folder = new ClusterFolder(Folder);
        var programs = await ServerPrograms.FindAsync(folder.DataMajor(), Cancel);
        // what a killed program leaves: a server, and a note of use that nobody holds
        await File.WriteAllTextAsync(Path.Combine(folder.Users, "killed"), "", Cancel);
        await Command.RunAsync(
            programs.PgCtl,
            ["-D", folder.Data, "-l", folder.Log, "-w", "-o", "-p 54998", "start"],
            folder.Path,
            ServiceUser.Find().Name,
            Cancel
        );
        var left = Postmaster.Running(folder.Data);

        await using (var cluster = await StartAsync())
        {
            Assert.Equal(left!.ProcessId, cluster.ProcessId);
            Assert.Equal(1, await RunAsync(cluster, "select 1"));
        }

        Assert.Null(Postmaster.Running(folder.Data));
    }

    [Fact]
    public async Task A_killed_server_starts_again_with_all_that_was_confirmed()
    {
        var killed = await StartAsync(durable: true);
        await RunAsync(killed, "create table kept as select n from generate_series(1, 10000) n");
        using (var server = Process.GetProcessById(killed.ProcessId))
        {
            server.Kill();
            await server.WaitForExitAsync(Cancel);
        }

        await killed.DisposeAsync();

        await using var again = await StartAsync(durable: true);
        Assert.NotEqual(killed.ProcessId, again.ProcessId);
        Assert.Equal(10000L, await RunAsync(again, "select count(*) from kept"));
    }

    [Theory]
    [InlineData("names some other process")]
    [InlineData("names no process")]
    [InlineData("")]
    public async Task A_note_left_by_a_dead_server_does_not_keep_the_next_from_starting(string note)
    {
        await (await StartAsync()).DisposeAsync();
        string[] lines = note switch
        {
            "names some other process" => [$"{Environment.ProcessId}", "", "", "5432"],
            "names no process" => ["999999999", "", "", "5432"],
            _ => [],
        };
        await File.WriteAllLinesAsync(
            Path.Combine(new ClusterFolder(Folder).Data, "postmaster.pid"),
            lines,
            Cancel
        );
        await using var cluster = await StartAsync();
        Assert.Equal(1, await RunAsync(cluster, "select 1"));
    }

    [Fact]
    public async Task A_layout_that_was_cut_off_is_made_anew()
    {
        var folder = new ClusterFolder(Folder);
        Directory.CreateDirectory(folder.UnfinishedData);
        await File.WriteAllTextAsync(
            Path.Combine(folder.UnfinishedData, "PG_VERSION"),
            "15",
            Cancel
        );
        await using var cluster = await StartAsync();
        Assert.Equal(1, await RunAsync(cluster, "select 1"));
    }

    [Fact]
    public async Task A_folder_out_of_reach_is_told_plainly()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows has no such file modes.");
        if (!OperatingSystem.IsWindows())
            Directory.CreateDirectory(
                Path.Combine(_place, "a"),
                UnixFileMode.UserRead | UnixFileMode.UserExecute
            );
        var e = await Assert.ThrowsAsync<PracticeDatabaseException>(() => StartAsync());
        Assert.Contains("cannot write to", e.Message, StringComparison.Ordinal);
        Assert.Contains("Data__Folder", e.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_throw_away_cluster_leaves_nothing()
    {
        await (await StartAsync(deleteOnStop: true)).DisposeAsync();
        Assert.False(Directory.Exists(Folder));
    }

    private Task<PrivateCluster> StartAsync(bool durable = false, bool deleteOnStop = false) =>
        PrivateCluster.StartAsync(
            new()
            {
                Folder = Folder,
                Durable = durable,
                DeleteOnStop = deleteOnStop,
            },
            Cancel
        );

    private static async Task<object?> RunAsync(PrivateCluster cluster, string sql)
    {
        var connection = new NpgsqlConnectionStringBuilder(cluster.ConnectionString)
        {
            Pooling = false,
        };
        await using var source = NpgsqlDataSource.Create(connection);
        await using var command = source.CreateCommand(sql);
        return await command.ExecuteScalarAsync(Cancel);
    }

    public void Dispose() => Directory.Delete(_place, recursive: true);
}
