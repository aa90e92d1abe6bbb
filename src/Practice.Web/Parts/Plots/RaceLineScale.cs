using NodaTime;

namespace Practice.Web.Parts.Plots;

/// <summary>
/// Where a moment lies on the race line, % from today to the finish. Weeks far off are drawn close together and the
/// last hours wide apart, by the logarithm of the time left: all that matters happens late.
/// </summary>
public sealed class RaceLineScale(LocalDateTime from, LocalDateTime finish)
{
    /// <summary>The stretch before the finish that is drawn nearly true, h.</summary>
    private const double NearHours = 10;

    private readonly double longest = Math.Log(1 + Math.Max(1, Hours(from, finish)) / NearHours);

    public double At(LocalDateTime moment)
    {
        var left = Math.Max(0, Hours(moment, finish));
        return Math.Clamp((1 - Math.Log(1 + left / NearHours) / longest) * 100, 0, 100);
    }

    private static double Hours(LocalDateTime from, LocalDateTime to) =>
        (to.InUtc().ToInstant() - from.InUtc().ToInstant()).TotalHours;
}
