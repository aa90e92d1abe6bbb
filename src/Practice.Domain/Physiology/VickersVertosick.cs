using NodaTime;

namespace Practice.Domain.Physiology;

/// <summary>
/// Marathon time of a recreational runner from one shorter race and the weekly distance. Mean squared error 228 against
/// 381 for Riegel. One open copy misprints the last coefficient tenfold; check R03 tells them apart.
/// Source: Vickers and Vertosick 2016, the model with one race.
/// </summary>
public static class VickersVertosick
{
    /// <summary>The marathon, km: the only distance this model predicts.</summary>
    public const double MarathonKm = 42.195;

    private const double KilometresPerMile = 1.609344;

    /// <summary>Expected marathon time.</summary>
    /// <param name="time">Time of the shorter race.</param>
    /// <param name="kilometres">Its distance, km, above 0.</param>
    /// <param name="weeklyKm">Running in a usual week, km, 0 or more.</param>
    public static Duration Marathon(Duration time, double kilometres, double weeklyKm)
    {
        const double metres = MarathonKm * 1000;
        var scaled = metres / (time.TotalSeconds * Math.Pow(MarathonKm / kilometres, 1.07));
        var tensOfMiles = weeklyKm / KilometresPerMile / 10;
        var speed = 0.16018617 + 0.83076202 * scaled + 0.06423826 * tensOfMiles;
        return Duration.FromSeconds(metres / speed);
    }
}
