using System.Globalization;
using System.Net;
using System.Net.Sockets;
using Npgsql;

namespace Practice.Store.Cluster;

/// <summary>
/// A PostgreSQL server of the application's own, on this machine and seen by nobody else. The first program that needs
/// it starts it, others join, the last one out stops it. A server left behind by a killed program is taken over.
/// </summary>
internal sealed class PrivateCluster : IAsyncDisposable
{
    private readonly PrivateClusterOptions _options;
    private readonly ClusterFolder _folder;
    private readonly ServiceUser _user;
    private readonly ServerPrograms _programs;
    private Users? _users;

    private PrivateCluster(
        PrivateClusterOptions options,
        ClusterFolder folder,
        ServiceUser user,
        ServerPrograms programs
    ) => (_options, _folder, _user, _programs) = (options, folder, user, programs);

    /// <summary>Connection of the role that owns everything.</summary>
    public string ConnectionString { get; private set; } = "";

    /// <summary>The server's process.</summary>
    public int ProcessId { get; private set; }

    /// <exception cref="PracticeDatabaseException">It cannot be started; the message says what to do.</exception>
    public static async Task<PrivateCluster> StartAsync(
        PrivateClusterOptions options,
        CancellationToken cancel = default
    )
    {
        var folder = new ClusterFolder(options.Folder);
        var user = ServiceUser.Find();
        if (!await user.CanUseAsync(folder.Path, cancel))
            throw new PracticeDatabaseException(
                $"PostgreSQL runs as the user '{user.Name ?? Environment.UserName}', who cannot write to {folder.Path}. "
                    + "Name another folder in Data__Folder."
            );
        var programs = await ServerPrograms.FindAsync(folder.DataMajor(), cancel);
        var cluster = new PrivateCluster(options, folder, user, programs);
        try
        {
            using var gate = await FileLock.WaitAsync(folder.Gate, cancel);
            await cluster.EnterAsync(cancel);
            return cluster;
        }
        catch
        {
            await cluster.DisposeAsync();
            throw;
        }
    }

    private async Task EnterAsync(CancellationToken cancel)
    {
        if (!Directory.Exists(_folder.Data))
            await ClusterLayout.MakeAsync(_folder, _programs, _user, _options.Durable, cancel);
        var server = Postmaster.Running(_folder.Data) ?? await StartServerAsync(cancel);
        _users = Users.Enter(_folder);
        ProcessId = server.ProcessId;
        ConnectionString = new NpgsqlConnectionStringBuilder
        {
            Host = IPAddress.Loopback.ToString(),
            Port = server.Port,
            Username = ClusterLayout.Owner,
            Password = await File.ReadAllTextAsync(_folder.Password, cancel),
            Database = _options.Database,
        }.ConnectionString;
        await EnsureDatabaseAsync(cancel);
    }

    private async Task<Postmaster> StartServerAsync(CancellationToken cancel)
    {
        Postmaster.ForgetMisleading(_folder.Data);
        for (var triesLeft = 2; ; triesLeft--)
        {
            // somebody may take the port before the server does: then another one
            var port = FreePort();
            try
            {
                await PgCtlAsync(["-l", _folder.Log, "-o", $"-p {port}", "start"], cancel);
                return Postmaster.Running(_folder.Data)
                    ?? throw new PracticeDatabaseException(
                        $"PostgreSQL ended as soon as it had started; see {_folder.Log}."
                    );
            }
            catch (PracticeDatabaseException e)
            {
                if (triesLeft == 0)
                    throw new PracticeDatabaseException(
                        $"PostgreSQL does not start. {e.Message} Its log, {_folder.Log}, ends: {await _folder.EndOfLogAsync(cancel)}",
                        e
                    );
            }
        }
    }

    private async Task EnsureDatabaseAsync(CancellationToken cancel)
    {
        var server = new NpgsqlConnectionStringBuilder(ConnectionString)
        {
            Database = "postgres",
            Pooling = false,
        };
        await using var connection = new NpgsqlConnection(server.ConnectionString);
        await OpenPatientlyAsync(connection, cancel);
        await using var question = new NpgsqlCommand(
            "select format('create database %I', $1) where not exists (select from pg_database where datname = $1)",
            connection
        )
        {
            Parameters = { new() { Value = _options.Database } },
        };
        if (await question.ExecuteScalarAsync(cancel) is not string create)
            return;
#pragma warning disable CA2100 // the server itself has quoted the name
        await using var command = new NpgsqlCommand(create, connection);
#pragma warning restore CA2100
        await command.ExecuteNonQueryAsync(cancel);
    }

    /// <summary>A server joined while it recovers from a crash refuses for a while.</summary>
    private async Task OpenPatientlyAsync(NpgsqlConnection connection, CancellationToken cancel)
    {
        using var patience = CancellationTokenSource.CreateLinkedTokenSource(cancel);
        patience.CancelAfter(_options.Patience);
        while (true)
        {
            try
            {
                await connection.OpenAsync(patience.Token);
                return;
            }
            catch (PostgresException e) when (e.SqlState == PostgresErrorCodes.CannotConnectNow)
            {
                await Task.Delay(TimeSpan.FromMilliseconds(100), patience.Token);
            }
        }
    }

    public async ValueTask DisposeAsync()
    {
        if (_users is null)
            return;
        using (await FileLock.WaitAsync(_folder.Gate, CancellationToken.None))
        {
            _users.Dispose();
            _users = null;
            if (Users.Any(_folder))
                return;
            await StopServerAsync();
        }

        if (_options.DeleteOnStop)
            Directory.Delete(_folder.Path, recursive: true);
    }

    private async Task StopServerAsync()
    {
        if (Postmaster.Running(_folder.Data) is null)
            return;
        try
        {
            await PgCtlAsync(["-m", "fast", "stop"], CancellationToken.None);
        }
        // it was dying by itself
        catch (PracticeDatabaseException) when (Postmaster.Running(_folder.Data) is null) { }
    }

    private async Task PgCtlAsync(IEnumerable<string> arguments, CancellationToken cancel)
    {
        var seconds = _options.Patience.TotalSeconds.ToString("0", CultureInfo.InvariantCulture);
        await Command.RunAsync(
            _programs.PgCtl,
            ["-D", _folder.Data, "-w", "-t", seconds, .. arguments],
            _folder.Path,
            _user.Name,
            cancel
        );
    }

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }
}
