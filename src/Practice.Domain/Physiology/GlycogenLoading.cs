namespace Practice.Domain.Physiology;

/// <summary>How fast and how far muscle glycogen rises while loading.</summary>
/// <param name="Plateau">What it tends to at 10 g/kg a day and more, mmol/kg wet weight.</param>
/// <param name="RatePerHour">Rate constant, 1/h.</param>
public sealed record GlycogenLoading(double Plateau, double RatePerHour)
{
    /// <summary>Fitted to Bussau 2002 (95 at 0 h, 180 at 24 h and 72 h), first rate held to 10 mmol/kg/h.</summary>
    public static GlycogenLoading Expected { get; } = new(182, 0.115);

    /// <summary>Lower end: the studies that loaded least, and 24 h at two standard errors below 180.</summary>
    public static GlycogenLoading Low { get; } = new(155, 0.05);

    /// <summary>Upper end: the studies that loaded most.</summary>
    public static GlycogenLoading High { get; } = new(210, 0.115);

    /// <summary>Time to cover half of what is missing, h. Check L14.</summary>
    public double HalfTimeHours => Math.Log(2) / RatePerHour;

    /// <summary>
    /// Plateau at a dose: as on a usual diet at 5 g/kg a day, rising in a straight line to the full plateau at 10 (own
    /// rule; no depletion phase is modelled, it is not needed). Checks L16, L17.
    /// </summary>
    /// <param name="gramsPerKgDay">Carbohydrate, g/kg per 24 h.</param>
    public double PlateauAt(double gramsPerKgDay) =>
        MuscleGlycogen.Usual
        + (Plateau - MuscleGlycogen.Usual) * Math.Clamp((gramsPerKgDay - 5) / 5, 0, 1);

    /// <summary>Share of the way to the plateau covered after some hours, 0 to 1.</summary>
    public double Progress(double hours) => 1 - Math.Exp(-RatePerHour * hours);

    /// <summary>
    /// Concentration after some hours, mmol/kg wet weight: c = p - (p - c0) e^(-k t). Never falls: where the dose holds
    /// less than is there already, it stays. Good to about 20 mmol/kg. Checks L08-L13, L15, L18.
    /// </summary>
    /// <param name="start">Concentration at the first loading meal, mmol/kg wet weight.</param>
    /// <param name="gramsPerKgDay">Carbohydrate, g/kg per 24 h.</param>
    /// <param name="hours">Hours from the first loading meal, 0 or more.</param>
    public double At(double start, double gramsPerKgDay, double hours) =>
        start + Math.Max(0, PlateauAt(gramsPerKgDay) - start) * Progress(hours);
}
