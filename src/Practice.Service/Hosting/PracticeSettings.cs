using Microsoft.Extensions.Configuration;
using NodaTime;

namespace Practice.Service.Hosting;

/// <summary>What the configuration says about the practice as a whole.</summary>
/// <param name="Zone">Where the practice is: decides what "today" is. <c>Practice:TimeZone</c>, else the machine's.</param>
/// <param name="Demo">
/// Whether an empty database becomes the demo practice. <c>Demo:Enabled</c>, else only where no server is named.
/// </param>
/// <param name="MailFolder">
/// Where letters of a practice without a mail server land as files. <c>Mail:Folder</c>; null: they wait for a server.
/// </param>
/// <param name="Address">
/// Under which address the program is reached, for links in letters. <c>Practice:Address</c>; null: as whoever causes
/// the letter reached it.
/// </param>
public sealed record PracticeSettings(
    DateTimeZone Zone,
    bool Demo,
    string? MailFolder = null,
    Uri? Address = null
)
{
    /// <summary>A full address of a page, for a letter.</summary>
    /// <param name="reached">The address under which whoever causes the letter reached the program.</param>
    /// <param name="page">The page, without a slash in front.</param>
    public string Link(string reached, string page) =>
        new Uri(Address ?? new Uri(reached), page).ToString();

    /// <exception cref="InvalidOperationException">The time zone is unknown.</exception>
    public static PracticeSettings From(IConfiguration configuration)
    {
        var ownServer = string.IsNullOrEmpty(configuration.GetConnectionString("Practice"));
        return new PracticeSettings(
            configuration["Practice:TimeZone"] is { Length: > 0 } id
                ? DateTimeZoneProviders.Tzdb.GetZoneOrNull(id)
                    ?? throw new InvalidOperationException(
                        $"Practice:TimeZone is '{id}', which is no IANA time zone such as Europe/London."
                    )
                : DateTimeZoneProviders.Tzdb.GetSystemDefault(),
            configuration.GetValue("Demo:Enabled", ownServer),
            configuration["Mail:Folder"] is { Length: > 0 } folder
                ? Path.GetFullPath(folder)
                : null,
            PublicAddress(configuration["Practice:Address"])
        );
    }

    private static Uri? PublicAddress(string? address) =>
        string.IsNullOrEmpty(address) ? null
        : Uri.TryCreate(address.TrimEnd('/') + "/", UriKind.Absolute, out var uri)
        && uri.Scheme is "https" or "http"
            ? uri
        : throw new InvalidOperationException(
            $"Practice:Address is '{address}', which is no address such as https://practice.example."
        );
}
