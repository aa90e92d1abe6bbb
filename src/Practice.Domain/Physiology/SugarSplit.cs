namespace Practice.Domain.Physiology;

/// <summary>
/// A rate of carbohydrate split into glucose and fructose by their ratio. Sucrose counts half and half, maltodextrin
/// and starch as glucose. Checks T14, T15, P10.
/// </summary>
/// <param name="GlucoseGPerHour">Glucose, g/h.</param>
/// <param name="FructoseGPerHour">Fructose, g/h.</param>
public sealed record SugarSplit(double GlucoseGPerHour, double FructoseGPerHour)
{
    /// <summary>Splits a rate.</summary>
    /// <param name="totalGPerHour">Carbohydrate, g/h.</param>
    /// <param name="fructoseToGlucose">0.5 for two parts of glucose to one of fructose, 0.8 for 1:0.8.</param>
    public static SugarSplit Of(double totalGPerHour, double fructoseToGlucose) =>
        new(
            totalGPerHour / (1 + fructoseToGlucose),
            totalGPerHour * fructoseToGlucose / (1 + fructoseToGlucose)
        );
}
