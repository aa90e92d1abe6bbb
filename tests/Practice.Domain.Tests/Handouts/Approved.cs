using System.Runtime.CompilerServices;

namespace Practice.Domain.Tests.Handouts;

/// <summary>
/// Golden texts. What differs is written beside the approved file as <c>.received.txt</c> for a person to read; nothing
/// ever approves itself. To approve, replace the approved file by the received one.
/// </summary>
internal static class Approved
{
    public static void Text(string received, string name, [CallerFilePath] string testFile = "")
    {
        var folder = Path.Combine(Path.GetDirectoryName(testFile)!, "Golden");
        var approvedPath = Path.Combine(folder, $"{name}.txt");
        var receivedPath = Path.Combine(folder, $"{name}.received.txt");
        var approved = File.Exists(approvedPath) ? Normal(File.ReadAllText(approvedPath)) : "";
        received = Normal(received);
        if (received == approved)
        {
            File.Delete(receivedPath);
            return;
        }
        Directory.CreateDirectory(folder);
        File.WriteAllText(receivedPath, received);
        Assert.Fail($"{FirstDifference(approved, received)}\nRead {receivedPath} and approve it.");
    }

    private static string FirstDifference(string approved, string received)
    {
        var (was, now) = (approved.Split('\n'), received.Split('\n'));
        var line = Enumerable
            .Range(0, Math.Max(was.Length, now.Length))
            .First(i => was.ElementAtOrDefault(i) != now.ElementAtOrDefault(i));
        return $"Line {line + 1}\n  approved: {was.ElementAtOrDefault(line)}\n  received: {now.ElementAtOrDefault(line)}";
    }

    // no-break spaces matter and can not be seen: shown as ~
    private static string Normal(string text) =>
        text.Replace('\u00A0', '~').ReplaceLineEndings("\n").TrimEnd() + "\n";
}
