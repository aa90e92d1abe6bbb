namespace Practice.Domain.Physiology;

/// <summary>
/// Drinking before the start: 5 to 7 mL/kg at least four hours before, or with an early breakfast; 3 to 5 mL/kg more two
/// hours before when there is no urine or it is dark. Source: American College of Sports Medicine 2007 (Sawka). Checks
/// F05-F07.
/// </summary>
public static class PreRaceFluid
{
    /// <summary>Lower end, mL.</summary>
    public static decimal LowMl(decimal massKg) => 5 * massKg;

    /// <summary>Upper end, mL.</summary>
    public static decimal HighMl(decimal massKg) => 7 * massKg;

    /// <summary>Lower end of the top-up, mL.</summary>
    public static decimal TopUpLowMl(decimal massKg) => 3 * massKg;

    /// <summary>Upper end of the top-up, mL.</summary>
    public static decimal TopUpHighMl(decimal massKg) => 5 * massKg;
}
