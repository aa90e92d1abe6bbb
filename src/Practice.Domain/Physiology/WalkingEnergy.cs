namespace Practice.Domain.Physiology;

/// <summary>
/// Net energy of walking: the horizontal term of the ACSM walking equation, 0.1 mL of oxygen per kg and metre at
/// 5 kcal/L, is 0.5 kcal per kg and km (derived like check E09; the equation is for 50 to 100 m/min). A load carried
/// counts as body mass (own rule). Checks E03 and E04 prove the equation.
/// </summary>
public static class WalkingEnergy
{
    /// <summary>Net cost on the level, kcal/kg/km.</summary>
    public const double KcalPerKgPerKm = 0.5;

    /// <summary>Gross oxygen uptake, mL/kg/min.</summary>
    /// <param name="metresPerMinute">Speed, m/min, 50 to 100.</param>
    /// <param name="gradient">Rise over run, 0 or more.</param>
    public static double OxygenUptake(double metresPerMinute, double gradient) =>
        0.1 * metresPerMinute + 1.8 * metresPerMinute * gradient + 3.5;

    /// <summary>Net energy, kcal.</summary>
    /// <param name="massKg">Body mass, kg.</param>
    /// <param name="loadKg">Load carried, kg.</param>
    /// <param name="flatKm">Distance on the level that costs the same, km.</param>
    public static double NetKcal(double massKg, double loadKg, double flatKm) =>
        KcalPerKgPerKm * (massKg + loadKg) * flatKm;
}
