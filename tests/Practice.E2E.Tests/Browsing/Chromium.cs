using System.Diagnostics;

namespace Practice.E2E.Tests.Browsing;

/// <summary>A browser of the machine; on a Debian machine that may be changed it is installed once.</summary>
internal static class Chromium
{
    public const string Missing =
        "No Chromium here. Install chromium or Google Chrome, or name one in PRACTICE_CHROMIUM.";

    private static readonly string[] UsualPlaces =
    [
        "/usr/bin/chromium",
        "/usr/bin/chromium-browser",
        "/usr/bin/google-chrome",
        "/usr/bin/google-chrome-stable",
        "/snap/bin/chromium",
        "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
        "/Applications/Chromium.app/Contents/MacOS/Chromium",
        @"C:\Program Files\Google\Chrome\Application\chrome.exe",
        @"C:\Program Files (x86)\Google\Chrome\Application\chrome.exe",
        @"C:\Program Files (x86)\Microsoft\Edge\Application\msedge.exe",
    ];

    /// <returns>Its program file; null where there is none to be had.</returns>
    public static async Task<string?> FindAsync()
    {
        if (Environment.GetEnvironmentVariable("PRACTICE_CHROMIUM") is { Length: > 0 } named)
            return named;
        return InUsualPlaces() ?? (await InstalledAsync() ? InUsualPlaces() : null);
    }

    private static string? InUsualPlaces() => UsualPlaces.FirstOrDefault(File.Exists);

    private static async Task<bool> InstalledAsync() =>
        Environment.IsPrivilegedProcess
        && File.Exists("/usr/bin/apt-get")
        && await RunsAsync("apt-get", "update")
        && await RunsAsync("apt-get", "install", "-y", "--no-install-recommends", "chromium");

    private static async Task<bool> RunsAsync(string program, params string[] arguments)
    {
        var start = new ProcessStartInfo(program, arguments)
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        start.Environment["DEBIAN_FRONTEND"] = "noninteractive";
        using var process = Process.Start(start)!;
        process.StandardInput.Close();
        await Task.WhenAll(
            process.StandardOutput.ReadToEndAsync(),
            process.StandardError.ReadToEndAsync()
        );
        await process.WaitForExitAsync();
        return process.ExitCode == 0;
    }
}
