namespace Practice.Domain.Physiology;

/// <summary>
/// Oxygen uptake of running outdoors on the level, VO2 = 3.5 v, and the intensity it means for an athlete. For 8 to
/// 25 km/h; outside, the line is continued and should not be relied on. Within 2.3 % of the same authors' form with air
/// resistance at 12 km/h and 0.5 % at 20 km/h. Source: Léger and Mercier 1984. Checks E14, G10.
/// </summary>
public static class RunningIntensity
{
    /// <summary>Oxygen uptake, mL/kg/min, at a speed in km/h.</summary>
    public static double OxygenUptake(double kmPerHour) => 3.5 * kmPerHour;

    /// <summary>Share of the maximal oxygen uptake that a speed asks for; above 1 it cannot be held.</summary>
    /// <param name="kmPerHour">Speed, km/h.</param>
    /// <param name="vo2Max">Maximal oxygen uptake, mL/kg/min, above 0.</param>
    public static double Relative(double kmPerHour, double vo2Max) =>
        OxygenUptake(kmPerHour) / vo2Max;
}
