namespace Practice.Store.Cluster;

/// <summary>Where PostgreSQL usually lies, best first.</summary>
internal static class InstalledServers
{
    // the part before the star, the pattern, the part after it
    private static readonly (string Parent, string Pattern, string Below)[] UsualPlaces =
        OperatingSystem.IsWindows()
            ?
            [
                (
                    Path.Combine(
                        Environment.GetFolderPath(Environment.SpecialFolder.ProgramFiles),
                        "PostgreSQL"
                    ),
                    "*",
                    "bin"
                ),
            ]
            :
            [
                ("/usr/lib/postgresql", "*", "bin"),
                ("/usr", "pgsql-*", "bin"),
                ("/opt/homebrew/opt", "postgresql@*", "bin"),
                ("/usr/local/opt", "postgresql@*", "bin"),
                ("/Applications/Postgres.app/Contents/Versions", "*", "bin"),
                ("/usr/local", "pgsql", "bin"),
            ];

    /// <summary>Folders that may hold a server's programs.</summary>
    public static IEnumerable<string> Folders()
    {
        if (Environment.GetEnvironmentVariable("PRACTICE_PG_BIN") is { Length: > 0 } named)
            yield return named;
        foreach (var folder in OnPath())
            yield return folder;
        foreach (var (parent, pattern, below) in UsualPlaces.Where(p => Directory.Exists(p.Parent)))
        {
            var versions = Directory
                .EnumerateDirectories(parent, pattern)
                .OrderByDescending(d => d.Length)
                .ThenByDescending(d => d, StringComparer.Ordinal);
            foreach (var version in versions)
                yield return Path.Combine(version, below);
        }
    }

    private static IEnumerable<string> OnPath()
    {
        var program = OperatingSystem.IsWindows() ? "pg_ctl.exe" : "pg_ctl";
        var path = Environment.GetEnvironmentVariable("PATH") ?? "";
        return path.Split(Path.PathSeparator, StringSplitOptions.RemoveEmptyEntries)
            .Select(folder => new FileInfo(Path.Combine(folder, program)))
            .Where(file => file.Exists)
            // a link on the path: the server finds its own files beside the real program only
            .Select(file => file.ResolveLinkTarget(returnFinalTarget: true) ?? file)
            .Select(file => Path.GetDirectoryName(file.FullName)!);
    }
}
