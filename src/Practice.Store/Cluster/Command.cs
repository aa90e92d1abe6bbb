using System.ComponentModel;
using System.Diagnostics;

namespace Practice.Store.Cluster;

/// <summary>Runs a program to its end.</summary>
internal static class Command
{
    /// <summary>What the program wrote.</summary>
    /// <param name="file">The program.</param>
    /// <param name="arguments">Its arguments.</param>
    /// <param name="folder">Where it runs.</param>
    /// <param name="user">As whom; null for the user this process is.</param>
    /// <param name="cancel">Cancels the wait.</param>
    /// <exception cref="PracticeDatabaseException">It could not be run or ended with an error.</exception>
    public static async Task<string> RunAsync(
        string file,
        IEnumerable<string> arguments,
        string folder,
        string? user,
        CancellationToken cancel
    )
    {
        var name = Path.GetFileName(file);
        try
        {
            using var process = Process.Start(Setup(file, arguments, folder, user))!;
            // a server that inherits an open pipe would keep it open for its whole life
            process.StandardInput.Close();
            var output = process.StandardOutput.ReadToEndAsync(cancel);
            var errors = process.StandardError.ReadToEndAsync(cancel);
            await process.WaitForExitAsync(cancel);
            if (process.ExitCode == 0)
                return (await output).Trim();
            throw new PracticeDatabaseException(
                $"{name} ended with {process.ExitCode}: {(await errors).Trim()} {(await output).Trim()}"
            );
        }
        catch (Win32Exception e)
        {
            var who = user is null ? "" : $" as the user '{user}'";
            throw new PracticeDatabaseException(
                $"{name} cannot be run in {folder}{who}: {e.Message}.",
                e
            );
        }
    }

    /// <summary>What the program wrote; null when it could not be run or ended with an error.</summary>
    public static async Task<string?> TryAsync(
        string file,
        IEnumerable<string> arguments,
        string folder,
        string? user,
        CancellationToken cancel
    )
    {
        try
        {
            return await RunAsync(file, arguments, folder, user, cancel);
        }
        catch (PracticeDatabaseException)
        {
            return null;
        }
    }

    private static ProcessStartInfo Setup(
        string file,
        IEnumerable<string> arguments,
        string folder,
        string? user
    )
    {
        var setup = new ProcessStartInfo(file, arguments)
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = folder,
        };
        if (user is not null)
            setup.UserName = user;
        setup.Environment["LC_ALL"] = "C";
        // PGDATA, PGPORT and their like belong to the caller's own server
        foreach (
            var key in setup
                .Environment.Keys.Where(k => k.StartsWith("PG", StringComparison.Ordinal))
                .ToList()
        )
        {
            setup.Environment.Remove(key);
        }

        return setup;
    }
}
