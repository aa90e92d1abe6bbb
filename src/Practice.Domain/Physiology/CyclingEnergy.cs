namespace Practice.Domain.Physiology;

/// <summary>
/// Energy of cycling from mechanical work and gross efficiency, 0.20 to 0.25. Written from memory. Check E15.
/// </summary>
public static class CyclingEnergy
{
    /// <summary>Usual gross efficiency.</summary>
    public const double UsualEfficiency = 0.22;

    private const double KjPerKcal = 4.184;

    /// <summary>Gross energy, kcal.</summary>
    /// <param name="watts">Average power, W.</param>
    /// <param name="hours">Duration, h.</param>
    /// <param name="efficiency">Gross efficiency, 0.20 to 0.25.</param>
    public static double Kcal(double watts, double hours, double efficiency = UsualEfficiency) =>
        watts * hours * 3.6 / (efficiency * KjPerKcal);
}
