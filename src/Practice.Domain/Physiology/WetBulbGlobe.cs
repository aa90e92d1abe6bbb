namespace Practice.Domain.Physiology;

/// <summary>
/// Heat stress outdoors, °C. From a forecast only an estimate is possible: it assumes moderately strong sun and light
/// wind, so it reads high under cloud or in wind, and stations missed what was measured on courses by more than 3 °C in
/// 45 % of comparisons (Cheuvront 2015). Show it with 3 °C either way. Definition: ISO 7243. Estimate: American College
/// of Sports Medicine and Australian Bureau of Meteorology. Checks F15-F19.
/// </summary>
public static class WetBulbGlobe
{
    /// <summary>How far the estimate may be off, °C either way.</summary>
    public const double Spread = 3;

    /// <summary>Lowest air temperature the estimate is made for, °C.</summary>
    public const double LowestAirC = 10;

    /// <summary>Highest air temperature the estimate is made for, °C.</summary>
    public const double HighestAirC = 45;

    /// <summary>From the three thermometers outdoors.</summary>
    /// <param name="naturalWetBulbC">Natural wet bulb, °C.</param>
    /// <param name="globeC">Black globe, °C.</param>
    /// <param name="airC">Air, °C.</param>
    public static double Measured(double naturalWetBulbC, double globeC, double airC) =>
        0.7 * naturalWetBulbC + 0.2 * globeC + 0.1 * airC;

    /// <summary>Water vapour pressure, hPa.</summary>
    /// <param name="airC">Air, °C.</param>
    /// <param name="humidityPercent">Relative humidity, %.</param>
    public static double VapourPressure(double airC, double humidityPercent) =>
        humidityPercent / 100 * 6.105 * Math.Exp(17.27 * airC / (237.7 + airC));

    /// <summary>From a forecast; below 10 °C the line is continued, where heat is no question anyway.</summary>
    /// <param name="airC">Air, °C, 10 to 45.</param>
    /// <param name="humidityPercent">Relative humidity, %, 0 to 100.</param>
    public static double Estimated(double airC, double humidityPercent) =>
        0.567 * airC + 0.393 * VapourPressure(airC, humidityPercent) + 3.94;
}
