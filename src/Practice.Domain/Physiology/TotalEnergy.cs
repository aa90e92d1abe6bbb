namespace Practice.Domain.Physiology;

/// <summary>
/// Energy of a usual day, kcal: resting energy x 1.4 for life outside training (1.3 to 1.6) and the net energy of
/// training. Own rule.
/// </summary>
public static class TotalEnergy
{
    /// <summary>Factor for life outside training.</summary>
    public const double LifeFactor = 1.4;

    /// <summary>Energy of a day, kcal.</summary>
    /// <param name="restingKcal">Resting energy, kcal a day.</param>
    /// <param name="trainingKcal">Net energy of training, kcal a day.</param>
    public static double Kcal(double restingKcal, double trainingKcal) =>
        restingKcal * LifeFactor + trainingKcal;
}
