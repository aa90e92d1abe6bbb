namespace Practice.Domain.Physiology;

/// <summary>
/// How far liver and leg glycogen carry a runner who eats nothing: the marathon wall. It lets every gram in liver and
/// legs be used, so it explains and warns; it is never a prescription. Energy throughout per kg of body mass.
/// The paper's own algebra could not be read: these relations are rebuilt from its abstract, captions and secondary
/// accounts, and reproduce what it states. Source: Rapoport 2010. Checks G01-G14.
/// </summary>
public static class WallModel
{
    /// <summary>Liver as a share of body mass.</summary>
    public const double LiverShare = 0.025;

    /// <summary>Glycogen of a full liver, kcal per kg of liver.</summary>
    public const double FullLiverKcalPerKg = 360;

    /// <summary>Glycogen energy of legs at a concentration, kcal per kg of muscle. Checks L03, L04, L27.</summary>
    /// <param name="mmolPerKg">Concentration, mmol/kg wet weight.</param>
    public static double LegKcalPerKg(double mmolPerKg) =>
        MuscleGlycogen.Grams(mmolPerKg, muscleKg: 1) * KcalPerG;

    /// <summary>What is stored, kcal per kg of body mass.</summary>
    /// <param name="legShare">Leg muscle as a share of body mass, see <see cref="LegMuscle"/>.</param>
    /// <param name="legKcalPerKg">Glycogen of leg muscle, kcal per kg of muscle, 40 to 144.</param>
    /// <param name="liverFill">How full the liver is, 0 to 1.</param>
    public static double Store(double legShare, double legKcalPerKg, double liverFill = 1) =>
        LiverShare * FullLiverKcalPerKg * liverFill + legShare * legKcalPerKg;

    /// <summary>Distance at which the store is used up on the level, km.</summary>
    /// <param name="store">What is stored, kcal/kg.</param>
    /// <param name="relativeIntensity">VO2 over VO2max.</param>
    public static double WallKm(double store, double relativeIntensity) =>
        store / (RunningEnergy.KcalPerKgPerKm * CarbohydrateShare.At(relativeIntensity));

    /// <summary>Carbohydrate that must be absorbed on the way to reach the finish, g; zero when the store is enough.</summary>
    /// <param name="store">What is stored, kcal/kg.</param>
    /// <param name="relativeIntensity">VO2 over VO2max.</param>
    /// <param name="distanceKm">Distance on the level, km.</param>
    /// <param name="massKg">Body mass, kg.</param>
    public static double MissingG(
        double store,
        double relativeIntensity,
        double distanceKm,
        double massKg
    )
    {
        var used =
            RunningEnergy.KcalPerKgPerKm * distanceKm * CarbohydrateShare.At(relativeIntensity);
        return Math.Max(0, used - store) * massKg / KcalPerG;
    }

    /// <summary>The highest intensity, up to 1, at which the store reaches the finish; found by halving.</summary>
    /// <param name="store">What is stored, kcal/kg.</param>
    /// <param name="distanceKm">Distance on the level, km.</param>
    public static double FastestUnfedIntensity(double store, double distanceKm)
    {
        var (enough, tooMuch) = (0.2, 1.0);
        if (WallKm(store, tooMuch) >= distanceKm)
            return tooMuch;
        while (tooMuch - enough > 1e-9)
        {
            var middle = (enough + tooMuch) / 2;
            if (WallKm(store, middle) >= distanceKm)
                enough = middle;
            else
                tooMuch = middle;
        }
        return enough;
    }

    private const double KcalPerG = (double)FoodEnergy.Carbohydrate;
}
