using NodaTime;

namespace Practice.Domain.Physiology;

/// <summary>
/// Running performance as one number, VDOT: the oxygen uptake of a speed over the share of the maximum that can be held
/// for the time. An index of performance that stands in for VO2max, to about 5 mL/kg/min. Published for races of 3.5 to
/// 240 min. Source: Daniels and Gilbert 1979. Checks D01-D11.
/// </summary>
public static class DanielsGilbert
{
    /// <summary>Shortest race the relation was made for.</summary>
    public static readonly Duration ShortestRace = Duration.FromMinutes(3.5);

    /// <summary>Longest race the relation was made for.</summary>
    public static readonly Duration LongestRace = Duration.FromMinutes(240);

    /// <summary>Oxygen uptake of a speed, mL/kg/min.</summary>
    /// <param name="metresPerMinute">Speed, m/min.</param>
    public static double OxygenUptake(double metresPerMinute) =>
        -4.60 + 0.182258 * metresPerMinute + 0.000104 * metresPerMinute * metresPerMinute;

    /// <summary>Share of the maximal oxygen uptake that can be held for a time, 0.8 to 1.3.</summary>
    /// <param name="minutes">Time, min.</param>
    public static double SustainableShare(double minutes) =>
        0.8
        + 0.1894393 * Math.Exp(-0.012778 * minutes)
        + 0.2989558 * Math.Exp(-0.1932605 * minutes);

    /// <summary>VDOT of a race, mL/kg/min.</summary>
    /// <param name="metres">Distance, m.</param>
    /// <param name="time">Finish time, above zero.</param>
    public static double Vdot(double metres, Duration time) =>
        OxygenUptake(metres / time.TotalMinutes) / SustainableShare(time.TotalMinutes);

    /// <summary>
    /// Time over a distance at a VDOT, by halving: a slower time means a lower VDOT throughout. Searched from 3
    /// to 30 km/h; beyond, the nearer end.
    /// </summary>
    /// <param name="vdot">VDOT, mL/kg/min, above 0.</param>
    /// <param name="metres">Distance, m.</param>
    public static Duration TimeAt(double vdot, double metres)
    {
        var (fast, slow) = (metres / FastestMetresPerMinute, metres / SlowestMetresPerMinute);
        while (slow - fast > 1e-6)
        {
            var middle = (fast + slow) / 2;
            if (Vdot(metres, Duration.FromMinutes(middle)) > vdot)
                fast = middle;
            else
                slow = middle;
        }
        return Duration.FromMinutes(slow);
    }

    private const double FastestMetresPerMinute = 500;
    private const double SlowestMetresPerMinute = 50;
}
