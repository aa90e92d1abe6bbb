using System.Diagnostics;
using System.Globalization;
using Practice.Store;
using Practice.Store.Cluster;

namespace Practice.TestSupport;

/// <summary>A throw-away cluster of this process, in memory where there is room.</summary>
internal static class TestCluster
{
    private const string Name = "practice-test-";
    private const long RoomNeeded = 1L << 30;

    public static async Task<PrivateCluster> StartAsync()
    {
        var place = Place();
        await SweepAsync(place);
        return await PrivateCluster.StartAsync(
            In(Path.Combine(place, Name + Environment.ProcessId))
        );
    }

    private static PrivateClusterOptions In(string folder) =>
        new()
        {
            Folder = folder,
            Durable = false,
            DeleteOnStop = true,
        };

    /// <summary>Memory where there is room for it, else the place for temporary files.</summary>
    public static string Place() =>
        Directory.Exists("/dev/shm") && new DriveInfo("/dev/shm").AvailableFreeSpace > RoomNeeded
            ? "/dev/shm"
            : Path.GetTempPath();

    /// <summary>Takes away what a killed test run left behind, its server included.</summary>
    private static async Task SweepAsync(string place)
    {
        foreach (var folder in Directory.EnumerateDirectories(place, Name + "*"))
        {
            var process = Path.GetFileName(folder)[Name.Length..];
            if (IsAlive(int.Parse(process, CultureInfo.InvariantCulture)))
                continue;
            try
            {
                // to join and to be the last one out is to stop it
                await using var left = await PrivateCluster.StartAsync(In(folder));
            }
            catch (PracticeDatabaseException)
            {
                Directory.Delete(folder, recursive: true);
            }
        }
    }

    private static bool IsAlive(int processId)
    {
        try
        {
            using var process = Process.GetProcessById(processId);
            return !process.HasExited;
        }
        catch (ArgumentException)
        {
            return false;
        }
    }
}
