using NodaTime;
using Practice.Domain.Clients;

namespace Practice.Domain.Physiology;

/// <summary>A race time expected from a recent result on roads.</summary>
/// <param name="Time">Expected finish time.</param>
/// <param name="Model">Name of the relation.</param>
/// <param name="Riegel">What Riegel's relation says: a goal faster than this is bold.</param>
/// <param name="Warning">What a reader must know of it; null when nothing.</param>
public sealed record RaceTimePrediction(
    Duration Time,
    string Model,
    Duration Riegel,
    string? Warning = null
)
{
    /// <summary>
    /// The recommended relation. For a marathon Vickers-Vertosick when the weekly distance is known and the result is of
    /// a shorter race; otherwise Riegel, which warns before a marathon.
    /// </summary>
    /// <param name="result">A recent race.</param>
    /// <param name="distanceKm">The distance to predict, km.</param>
    /// <param name="weeklyKm">Running in a usual week, km; null when unknown.</param>
    public static RaceTimePrediction From(RaceResult result, decimal distanceKm, decimal? weeklyKm)
    {
        ArgumentNullException.ThrowIfNull(result);
        var (from, to) = ((double)result.DistanceKm, (double)distanceKm);
        var riegel = Physiology.Riegel.Time(result.Time, from, to);
        var marathonFromShorter = IsMarathon(to) && from <= LongestShorterRaceKm;
        if (marathonFromShorter && weeklyKm is { } weekly)
            return new(
                VickersVertosick.Marathon(result.Time, from, (double)weekly),
                "Vickers-Vertosick, one race",
                riegel
            );
        return new(
            riegel,
            "Riegel",
            riegel,
            marathonFromShorter
                ? "Half of recreational runners are at least 10 min slower than this. Enter the weekly distance for a better estimate."
                : null
        );
    }

    /// <summary>Own rule: from races longer than this, scaling a short distance up is no longer the question.</summary>
    private const double LongestShorterRaceKm = 25;

    private static bool IsMarathon(double km) => Math.Abs(km - VickersVertosick.MarathonKm) < 0.3;
}
