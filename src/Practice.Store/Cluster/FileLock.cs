namespace Practice.Store.Cluster;

/// <summary>A file that one holder at a time has open. The system lets go of it when the holder dies, however it dies.</summary>
internal static class FileLock
{
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(50);

    public static async Task<FileStream> WaitAsync(string path, CancellationToken cancel)
    {
        while (true)
        {
            if (Try(path) is { } held)
                return held;
            await Task.Delay(Pause, cancel);
        }
    }

    /// <summary>The lock, or null while somebody else has it.</summary>
    public static FileStream? Try(string path)
    {
        try
        {
            return new FileStream(
                path,
                FileMode.OpenOrCreate,
                FileAccess.ReadWrite,
                FileShare.None
            );
        }
        catch (IOException e) when (e is not (FileNotFoundException or DirectoryNotFoundException))
        {
            return null;
        }
    }
}
