using System.Security.Cryptography;

namespace Practice.Store.Cluster;

/// <summary>Lays out the data folder of a new cluster.</summary>
internal static class ClusterLayout
{
    /// <summary>The role that owns everything in the cluster.</summary>
    public const string Owner = "practice";

    public static async Task MakeAsync(
        ClusterFolder folder,
        ServerPrograms programs,
        ServiceUser user,
        bool durable,
        CancellationToken cancel
    )
    {
        if (Directory.Exists(folder.UnfinishedData))
            Directory.Delete(folder.UnfinishedData, recursive: true);
        await WritePasswordAsync(folder.Password, cancel);
        await user.OwnAsync(folder.Password, cancel);
        List<string> arguments =
        [
            "-D",
            folder.UnfinishedData,
            "-U",
            Owner,
            "--pwfile",
            folder.Password,
            "--auth=scram-sha-256",
            "--encoding=UTF8",
            // names sort the same on every system
            "--locale=C",
            "--locale-provider=icu",
            "--icu-locale=und",
        ];
        if (!durable)
            arguments.Add("--no-sync");
        await Command.RunAsync(programs.InitDb, arguments, folder.Path, user.Name, cancel);
        await File.AppendAllTextAsync(
            Path.Combine(folder.UnfinishedData, "postgresql.conf"),
            durable ? Settings : Settings + Careless,
            cancel
        );
        Directory.Move(folder.UnfinishedData, folder.Data);
    }

    private const string Settings = """

        # of this machine only, and no socket: its path may be too long
        listen_addresses = '127.0.0.1'
        unix_socket_directories = ''
        timezone = 'UTC'
        log_timezone = 'UTC'

        """;

    private const string Careless = """
        fsync = off
        synchronous_commit = off
        full_page_writes = off
        wal_level = minimal
        max_wal_senders = 0
        max_wal_size = 64MB
        autovacuum = off

        """;

    private static async Task WritePasswordAsync(string file, CancellationToken cancel)
    {
        File.Delete(file);
        var options = new FileStreamOptions
        {
            Mode = FileMode.CreateNew,
            Access = FileAccess.Write,
        };
        if (!OperatingSystem.IsWindows())
            options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        await using var writer = new StreamWriter(file, options);
        await writer.WriteAsync(
            Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(24)).AsMemory(),
            cancel
        );
    }
}
