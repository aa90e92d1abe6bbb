using Microsoft.Extensions.Configuration;
using NodaTime;

namespace Practice.Service.Hosting;

/// <summary>What the configuration says about the practice as a whole.</summary>
/// <param name="Zone">Where the practice is: decides what "today" is. <c>Practice:TimeZone</c>, else the machine's.</param>
/// <param name="Demo">
/// Whether an empty database becomes the demo practice. <c>Demo:Enabled</c>, else only where no server is named.
/// </param>
public sealed record PracticeSettings(DateTimeZone Zone, bool Demo)
{
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
            configuration.GetValue("Demo:Enabled", ownServer)
        );
    }
}
