namespace Practice.Domain.Physiology;

/// <summary>
/// Glycogen of muscle, in mmol of glycosyl units per kg wet weight, and what it is before loading. Glycosyl residue
/// 162.14 g/mol; dry weight over wet weight 4.3. Source: Areta and Hopkins 2018 (181 studies). Checks L01, L02, L24.
/// </summary>
public static class MuscleGlycogen
{
    /// <summary>Grams of glycogen in a mmol of glycosyl units.</summary>
    public const double GramsPerMmol = 0.162;

    /// <summary>On a usual diet at a VO2max of 53 mL/kg/min, mmol/kg wet weight (462 dry).</summary>
    public const double Usual = 107;

    /// <summary>Spread of the usual value, either way, mmol/kg wet weight.</summary>
    public const double UsualSpread = 25;

    private const double DryOverWet = 4.3;
    private const double DryPerVo2Max = 6.7;

    /// <summary>Wet-weight concentration from a dry-weight one.</summary>
    public static double FromDry(double mmolPerKgDry) => mmolPerKgDry / DryOverWet;

    /// <summary>Glycogen, g, of some kg of muscle.</summary>
    /// <param name="mmolPerKg">Concentration, mmol/kg wet weight.</param>
    /// <param name="muscleKg">Muscle, kg wet weight.</param>
    public static double Grams(double mmolPerKg, double muscleKg) =>
        mmolPerKg * muscleKg * GramsPerMmol;

    /// <summary>
    /// Concentration on a usual diet: 67 mmol/kg dry weight more for each 10 mL/kg/min of VO2max, held within 70 to
    /// 150 mmol/kg wet weight; 25 either way.
    /// </summary>
    /// <param name="vo2Max">Maximal oxygen uptake, mL/kg/min.</param>
    public static double OnUsualDiet(double vo2Max) =>
        Math.Clamp(
            Usual + FromDry(DryPerVo2Max * (vo2Max - MaximalOxygenUptake.StudyMean)),
            70,
            150
        );
}
