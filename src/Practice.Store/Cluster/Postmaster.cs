using System.Diagnostics;
using System.Globalization;

namespace Practice.Store.Cluster;

/// <summary>A running server, as its own note in the data folder tells.</summary>
internal sealed record Postmaster(int ProcessId, int Port)
{
    /// <summary>The server that runs on a data folder; null when none does, whatever a stale note says.</summary>
    public static Postmaster? Running(string dataFolder)
    {
        var file = NoteIn(dataFolder);
        if (!File.Exists(file))
            return null;
        // process id, data folder, start time, port, ...
        var lines = File.ReadAllLines(file);
        if (
            lines.Length < 4
            || !int.TryParse(lines[0], CultureInfo.InvariantCulture, out var processId)
            || !int.TryParse(lines[3], CultureInfo.InvariantCulture, out var port)
        )
            return null;
        return IsServerOf(dataFolder, processId) ? new Postmaster(processId, port) : null;
    }

    /// <summary>Removes the note of a server that is no more; another process may have its number by now.</summary>
    public static void ForgetDead(string dataFolder) => File.Delete(NoteIn(dataFolder));

    private static string NoteIn(string dataFolder) => Path.Combine(dataFolder, "postmaster.pid");

    private static bool IsServerOf(string dataFolder, int processId)
    {
        try
        {
            using var process = Process.GetProcessById(processId);
            if (
                process.HasExited
                || !process.ProcessName.StartsWith("postgres", StringComparison.OrdinalIgnoreCase)
            )
                return false;
            // A server works in its data folder. A killed one that nobody has waited for is still listed, without one.
            return !OperatingSystem.IsLinux()
                || new DirectoryInfo($"/proc/{processId}/cwd").ResolveLinkTarget(true)?.FullName
                    == dataFolder;
        }
        catch (Exception e)
            when (e
                    is ArgumentException
                        or InvalidOperationException
                        or IOException
                        or UnauthorizedAccessException
            )
        {
            return false;
        }
    }
}
