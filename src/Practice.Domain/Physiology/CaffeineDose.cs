namespace Practice.Domain.Physiology;

/// <summary>
/// Caffeine within the published limits: at most 200 mg at once and 400 mg a day for adults (EFSA 2015). It works from
/// about 2 mg/kg; 3 mg/kg do as well as 6 (Carvalho 2022). Checks C01 to C06.
/// </summary>
public static class CaffeineDose
{
    /// <summary>Most at once, mg.</summary>
    public const decimal AtOnceMg = 200;

    /// <summary>Most in a day for an adult, mg.</summary>
    public const decimal ADayMg = 400;

    /// <summary>One dose, mg.</summary>
    /// <param name="massKg">Body mass, kg.</param>
    /// <param name="mgPerKg">Dose chosen, mg/kg.</param>
    /// <param name="atOnceMg">Most at once, mg.</param>
    public static decimal OneDose(decimal massKg, decimal mgPerKg, decimal atOnceMg = AtOnceMg) =>
        Math.Min(massKg * mgPerKg, atOnceMg);

    /// <summary>What the day still allows of a planned amount, mg.</summary>
    /// <param name="plannedMg">Planned, mg.</param>
    /// <param name="alreadyMg">Taken already, mg.</param>
    /// <param name="aDayMg">Most in a day, mg.</param>
    public static decimal Allowed(decimal plannedMg, decimal alreadyMg, decimal aDayMg = ADayMg) =>
        Math.Min(plannedMg, Math.Max(0, aDayMg - alreadyMg));
}
