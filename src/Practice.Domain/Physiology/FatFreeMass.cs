using Practice.Domain.Clients;

namespace Practice.Domain.Physiology;

/// <summary>Fat-free mass, kg: from measured body fat, or estimated from mass and height.</summary>
public static class FatFreeMass
{
    /// <summary>From measured body fat: M (1 - fat/100). By definition. Check B07.</summary>
    /// <param name="massKg">Body mass, kg.</param>
    /// <param name="bodyFatPercent">Body fat, % of body mass, 3 to 60.</param>
    public static double FromBodyFat(double massKg, double bodyFatPercent) =>
        massKg * (1 - bodyFatPercent / 100);

    /// <summary>
    /// Boer 1984, for adults: an estimate, poor for athletes, whose muscle it does not see. Checks B08, B09.
    /// </summary>
    /// <param name="massKg">Body mass, kg.</param>
    /// <param name="heightCm">Height, cm.</param>
    /// <param name="sex">Sex.</param>
    public static double Boer(double massKg, double heightCm, Sex sex) =>
        sex == Sex.Male
            ? 0.407 * massKg + 0.267 * heightCm - 19.2
            : 0.252 * massKg + 0.473 * heightCm - 48.3;
}
