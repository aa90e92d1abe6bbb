using Practice.Domain.Clients;

namespace Practice.Domain.Physiology;

/// <summary>
/// Glycogen of the whole body, g: muscle share x body mass x concentration x 0.162 and the liver. Skeletal muscle from
/// Janssen 2000; liver 90 g on a usual diet, 120 g loaded (Murray and Rosenbloom 2018: typically 80, range 0 to 160).
/// Checks L19, L25, L26.
/// </summary>
public static class GlycogenStores
{
    /// <summary>Liver on a usual diet, g.</summary>
    public const double UsualLiverG = 90;

    /// <summary>Liver after loading, g.</summary>
    public const double LoadedLiverG = 120;

    /// <summary>Skeletal muscle as a share of body mass.</summary>
    public static double MuscleShare(Sex sex) => sex == Sex.Male ? 0.384 : 0.306;

    /// <summary>Glycogen in all skeletal muscle, g.</summary>
    /// <param name="massKg">Body mass, kg.</param>
    /// <param name="sex">Sex.</param>
    /// <param name="mmolPerKg">Concentration, mmol/kg wet weight.</param>
    public static double MuscleG(double massKg, Sex sex, double mmolPerKg) =>
        MuscleGlycogen.Grams(mmolPerKg, massKg * MuscleShare(sex));
}
