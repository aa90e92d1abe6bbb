namespace Practice.Domain.Physiology;

/// <summary>
/// Share of energy that comes from carbohydrate at a relative intensity. Fitted to fasted, trained, cycling men;
/// loading, breakfast and feeding push it up, and women burn somewhat more fat. Valid from 0.2 to 1 of VO2max, held at
/// the nearer end outside. Band 0.10 either way. Source: quadratic fit to figure 1 of Rapoport 2010. Checks S17-S24.
/// </summary>
public static class CarbohydrateShare
{
    /// <summary>Share of energy from carbohydrate, 0 to 1.</summary>
    /// <param name="relativeIntensity">VO2 over VO2max.</param>
    public static double At(double relativeIntensity)
    {
        var x = Math.Clamp(relativeIntensity, 0.2, 1);
        return Math.Clamp(0.565973 * x * x + 0.376443 * x - 0.000295601, 0, 1);
    }
}
