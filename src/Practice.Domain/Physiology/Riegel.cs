using NodaTime;

namespace Practice.Domain.Physiology;

/// <summary>
/// Race time from another race: t2 = t1 (d2/d1)^1.06. Well calibrated to the half marathon; marathon times come out at
/// least 10 min too fast for half of recreational runners (Vickers and Vertosick 2016).
/// Source: Riegel 1977, 1981. Checks R01, R02.
/// </summary>
public static class Riegel
{
    private const double Exponent = 1.06;

    /// <summary>Expected time over another distance.</summary>
    /// <param name="time">Time of the race that was run.</param>
    /// <param name="kilometres">Its distance, km, above 0.</param>
    /// <param name="toKilometres">The distance to predict, km.</param>
    public static Duration Time(Duration time, double kilometres, double toKilometres) =>
        time * Math.Pow(toKilometres / kilometres, Exponent);
}
