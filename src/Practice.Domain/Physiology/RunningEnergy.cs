namespace Practice.Domain.Physiology;

/// <summary>
/// Net energy of running on the level: 1 kcal per kg of body mass and km, whatever the speed. Net of rest; the gross
/// cost is about 9 % higher. Runners differ by about a fifth, and cost rises by up to 10 % with fatigue.
/// Source: Rapoport 2010 and secondary accounts; the band is from Lacour and Bourdin 2015. Checks E09, E10.
/// </summary>
public static class RunningEnergy
{
    /// <summary>Net cost, kcal/kg/km.</summary>
    public const double KcalPerKgPerKm = 1.0;

    /// <summary>Net energy of a distance, kcal.</summary>
    /// <param name="massKg">Body mass, kg.</param>
    /// <param name="distanceKm">Distance on the level, km, 0 or more.</param>
    public static double NetKcal(double massKg, double distanceKm) =>
        KcalPerKgPerKm * massKg * distanceKm;
}
