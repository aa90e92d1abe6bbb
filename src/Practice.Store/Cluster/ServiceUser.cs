namespace Practice.Store.Cluster;

/// <summary>
/// PostgreSQL refuses to run as root. Where the application is root, the server runs as a user without rights, who
/// must be able to reach the folder.
/// </summary>
internal sealed class ServiceUser
{
    private static readonly string[] Known = ["postgres", "nobody"];

    private ServiceUser(string? name) => Name = name;

    /// <summary>Null when the server may run as whoever the application is.</summary>
    public string? Name { get; }

    /// <exception cref="PracticeDatabaseException">Root, and nobody to run the server as.</exception>
    public static ServiceUser Find()
    {
        if (OperatingSystem.IsWindows() || !Environment.IsPrivilegedProcess)
            return new ServiceUser(null);
        var accounts = File.ReadLines("/etc/passwd").Select(line => line.Split(':')[0]).ToHashSet();
        return new ServiceUser(
            Known.FirstOrDefault(accounts.Contains)
                ?? throw new PracticeDatabaseException(
                    "PostgreSQL does not run as root, and there is no user 'postgres' or 'nobody' to run it as."
                )
        );
    }

    /// <summary>Makes a folder that the server may write to; false, and nothing made, when it cannot get there.</summary>
    public async Task<bool> CanUseAsync(string folder, CancellationToken cancel)
    {
        if (!await MayAsync("-x", NearestExisting(folder), cancel))
            return false;
        try
        {
            Directory.CreateDirectory(folder);
        }
        catch (UnauthorizedAccessException)
        {
            return false;
        }

        await OwnAsync(folder, cancel);
        return await MayAsync("-w", folder, cancel);
    }

    private async Task<bool> MayAsync(string what, string folder, CancellationToken cancel) =>
        OperatingSystem.IsWindows()
        || await Command.TryAsync("test", [what, folder], "/", Name, cancel) is not null;

    private static string NearestExisting(string folder) =>
        Directory.Exists(folder) ? folder : NearestExisting(Path.GetDirectoryName(folder)!);

    /// <summary>Hands a file or folder to the server's user.</summary>
    public async Task OwnAsync(string path, CancellationToken cancel)
    {
        if (Name is not null)
            await Command.RunAsync("chown", [Name, path], "/", user: null, cancel);
    }
}
