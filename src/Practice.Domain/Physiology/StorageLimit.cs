using Practice.Domain.Clients;

namespace Practice.Domain.Physiology;

/// <summary>
/// Glycogen cannot rise faster than food comes in: at most 0.75 of the carbohydrate eaten is stored, in muscle and liver
/// together (own rule; 346 g of 479 g, 0.72, in Acheson 1982). The loading curve is held to it, with the carbohydrate
/// taken as eaten evenly. Checks L22, L23.
/// </summary>
public static class StorageLimit
{
    /// <summary>Largest share of what is eaten that is stored.</summary>
    public const double StoredShare = 0.75;

    /// <summary>Most glycogen that can have been stored after some hours, g.</summary>
    /// <param name="massKg">Body mass, kg.</param>
    /// <param name="gramsPerKgDay">Carbohydrate, g/kg per 24 h.</param>
    /// <param name="hours">Hours from the first loading meal.</param>
    public static double MostStoredG(double massKg, double gramsPerKgDay, double hours) =>
        StoredShare * gramsPerKgDay * massKg * hours / 24;

    /// <summary>Muscle glycogen after some hours of loading, held to what can have been stored, mmol/kg wet weight.</summary>
    /// <param name="kinetics">How it rises by itself.</param>
    /// <param name="start">Concentration at the first loading meal, mmol/kg wet weight.</param>
    /// <param name="massKg">Body mass, kg.</param>
    /// <param name="sex">Sex.</param>
    /// <param name="gramsPerKgDay">Carbohydrate, g/kg per 24 h.</param>
    /// <param name="hours">Hours from the first loading meal, 0 or more.</param>
    public static double Hold(
        GlycogenLoading kinetics,
        double start,
        double massKg,
        Sex sex,
        double gramsPerKgDay,
        double hours
    )
    {
        ArgumentNullException.ThrowIfNull(kinetics);
        var room = Math.Max(0, kinetics.PlateauAt(gramsPerKgDay) - start);
        var roomG =
            GlycogenStores.MuscleG(massKg, sex, room)
            + GlycogenStores.LoadedLiverG
            - GlycogenStores.UsualLiverG;
        return Math.Min(
            kinetics.At(start, gramsPerKgDay, hours),
            start + room * MostStoredG(massKg, gramsPerKgDay, hours) / roomG
        );
    }
}
