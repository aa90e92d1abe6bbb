namespace Practice.Store.Cluster;

/// <summary>Which programs use a cluster. The last one out stops it; one that was killed no longer counts.</summary>
internal sealed class Users : IDisposable
{
    private readonly string _file;
    private readonly FileStream _held;

    private Users(string file, FileStream held) => (_file, _held) = (file, held);

    public static Users Enter(ClusterFolder folder)
    {
        Directory.CreateDirectory(folder.Users);
        var file = Path.Combine(folder.Users, $"{Guid.NewGuid():n}");
        return new Users(file, FileLock.Try(file)!);
    }

    /// <summary>Whether anybody still uses the cluster; forgets those that died.</summary>
    public static bool Any(ClusterFolder folder)
    {
        if (!Directory.Exists(folder.Users))
            return false;
        var any = false;
        foreach (var file in Directory.EnumerateFiles(folder.Users))
        {
            using var free = FileLock.Try(file);
            if (free is null)
                any = true;
            else
                File.Delete(file);
        }
        return any;
    }

    public void Dispose()
    {
        _held.Dispose();
        File.Delete(_file);
    }
}
