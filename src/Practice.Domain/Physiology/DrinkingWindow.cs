namespace Practice.Domain.Physiology;

/// <summary>
/// How much to drink an hour: enough to lose no more than 2 % of body mass (ACSM 2007), never more than is sweated, and
/// never more than 1 L (own rule, practicality). Aim is seven tenths of the sweat rate (own rule), inside the window.
/// Checks F03, F04, P09.
/// </summary>
/// <param name="FloorLPerHour">Least, L/h.</param>
/// <param name="AimLPerHour">Aim, L/h.</param>
/// <param name="CeilingLPerHour">Most, L/h.</param>
public sealed record DrinkingWindow(
    double FloorLPerHour,
    double AimLPerHour,
    double CeilingLPerHour
)
{
    /// <summary>Largest loss of body mass aimed at.</summary>
    public const double LossLimit = 0.02;

    /// <summary>Most that is practical, L/h.</summary>
    public const double PracticalMostLPerHour = 1.0;

    private const double ShareOfSweat = 0.7;

    /// <summary>Whether more would have to be drunk than can be: the ceiling holds and the loss passes 2 %.</summary>
    public bool IsTooNarrow => FloorLPerHour > CeilingLPerHour;

    /// <summary>The window for a race.</summary>
    /// <param name="massKg">Body mass, kg.</param>
    /// <param name="sweatLPerHour">Sweat rate, L/h.</param>
    /// <param name="hours">Duration, h, above 0.</param>
    public static DrinkingWindow Of(double massKg, double sweatLPerHour, double hours)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(hours);
        var floor = Math.Max(0, (sweatLPerHour * hours - LossLimit * massKg) / hours);
        var ceiling = Math.Min(sweatLPerHour, PracticalMostLPerHour);
        var aim =
            floor > ceiling ? ceiling : Math.Clamp(ShareOfSweat * sweatLPerHour, floor, ceiling);
        return new DrinkingWindow(floor, aim, ceiling);
    }
}
