using System.Security.Cryptography;
using System.Text;

namespace Practice.Store.Cluster;

/// <summary>Chooses where a private cluster lies when nobody said where.</summary>
internal static class DataFolder
{
    /// <summary>
    /// Beside the application where the server's user gets there; else in a place of the system, one for each
    /// application folder (a copy under <c>/root</c> is out of reach for anybody but root).
    /// </summary>
    public static async Task<string> ChooseAsync(string contentRoot, CancellationToken cancel)
    {
        var beside = Path.Combine(contentRoot, ".data", "postgres");
        return await ServiceUser.Find().CanUseAsync(beside, cancel)
            ? beside
            : Path.Combine(SystemPlace(), "practice", Mark(contentRoot));
    }

    private static string SystemPlace() =>
        !OperatingSystem.IsWindows() && Environment.IsPrivilegedProcess
            ? "/var/lib"
            : Environment.GetFolderPath(
                Environment.SpecialFolder.LocalApplicationData,
                Environment.SpecialFolderOption.Create
            );

    private static string Mark(string contentRoot) =>
        Convert.ToHexStringLower(
            SHA256.HashData(Encoding.UTF8.GetBytes(Path.GetFullPath(contentRoot)))
        )[..12];
}
