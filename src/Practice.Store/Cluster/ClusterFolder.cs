using System.Globalization;

namespace Practice.Store.Cluster;

/// <summary>Where things lie in the folder of a private cluster.</summary>
internal sealed class ClusterFolder(string path)
{
    public string Path { get; } = System.IO.Path.GetFullPath(path);

    /// <summary>The server's own data.</summary>
    public string Data => In("pgdata");

    /// <summary>Data still being laid out; becomes <see cref="Data"/> in one step, so a cut-off start leaves no half.</summary>
    public string UnfinishedData => In("pgdata.unfinished");

    public string Password => In("password");

    public string Log => In("server.log");

    /// <summary>Held while starting or stopping.</summary>
    public string Gate => In("gate.lock");

    /// <summary>One locked file for each program that uses the cluster.</summary>
    public string Users => In("users");

    /// <summary>Major version of the server that laid out the data; null when there is none yet.</summary>
    public int? DataMajor()
    {
        var file = System.IO.Path.Combine(Data, "PG_VERSION");
        return File.Exists(file)
            ? int.Parse(File.ReadAllText(file).Trim(), CultureInfo.InvariantCulture)
            : null;
    }

    /// <summary>The server's last words.</summary>
    public async Task<string> EndOfLogAsync(CancellationToken cancel) =>
        File.Exists(Log)
            ? string.Join(" | ", (await File.ReadAllLinesAsync(Log, cancel)).TakeLast(5))
            : "(no log)";

    private string In(string name) => System.IO.Path.Combine(Path, name);
}
