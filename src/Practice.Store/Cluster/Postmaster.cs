using System.Diagnostics;
using System.Globalization;

namespace Practice.Store.Cluster;

/// <summary>A running server, as its own note in the data folder tells.</summary>
internal sealed record Postmaster(int ProcessId, int Port)
{
    /// <summary>The server that runs on a data folder; null when none does, whatever a stale note says.</summary>
    public static Postmaster? Running(string dataFolder) =>
        NoteOf(dataFolder) is { } note && IsServerOf(dataFolder, note.ProcessId) ? note : null;

    /// <summary>
    /// Removes a dead server's note by which PostgreSQL would think it alive: its number is taken, by another program
    /// or by its own remains that nobody waited for, or a power cut left it half written. Any other note stays, since
    /// the next server tidies up by it.
    /// </summary>
    public static void ForgetMisleading(string dataFolder)
    {
        if (NoteOf(dataFolder) is not { } note || Exists(note.ProcessId))
            File.Delete(NoteIn(dataFolder));
    }

    private static string NoteIn(string dataFolder) => Path.Combine(dataFolder, "postmaster.pid");

    private static Postmaster? NoteOf(string dataFolder)
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
        return new Postmaster(processId, port);
    }

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

    private static bool Exists(int processId)
    {
        try
        {
            Process.GetProcessById(processId).Dispose();
            return true;
        }
        catch (ArgumentException)
        {
            return false;
        }
    }
}
