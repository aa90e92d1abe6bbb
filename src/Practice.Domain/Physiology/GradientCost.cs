namespace Practice.Domain.Physiology;

/// <summary>
/// How the cost of running and walking grows with the slope. Net cost in J per kg and metre along the slope, from
/// trained mountain runners, so that absolute values are low: use only the ratio to the level. Valid for gradients of
/// -0.45 to 0.45; outside, the nearer end counts. Source: Minetti 2002. Checks M01 to M14, K01 to K05.
/// </summary>
public static class GradientCost
{
    /// <summary>Cost of running on the level, J/kg/m.</summary>
    public const double RunningOnTheLevel = 3.6;

    /// <summary>Cost of walking on the level, J/kg/m.</summary>
    public const double WalkingOnTheLevel = 2.5;

    /// <summary>
    /// Runners do not use the full saving of a descent: none costs less than this share of the level (own rule).
    /// </summary>
    public const double DownhillFloor = 0.8;

    private const double Steepest = 0.45;

    /// <summary>Cost of running, J/kg/m.</summary>
    /// <param name="gradient">Rise over run, 0.05 for 5 %.</param>
    public static double Running(double gradient) =>
        Polynomial(gradient, 155.4, -30.4, -43.3, 46.3, 19.5, RunningOnTheLevel);

    /// <summary>Cost of walking, J/kg/m.</summary>
    /// <param name="gradient">Rise over run.</param>
    public static double Walking(double gradient) =>
        Polynomial(gradient, 280.5, -58.7, -76.8, 51.9, 19.6, WalkingOnTheLevel);

    /// <summary>Cost of running against the level, 1 on the level.</summary>
    /// <param name="gradient">Rise over run.</param>
    /// <param name="downhillFloor">Whether descents save no more than runners use.</param>
    public static double RunningRatio(double gradient, bool downhillFloor = true) =>
        Math.Max(Running(gradient) / RunningOnTheLevel, downhillFloor ? DownhillFloor : 0);

    /// <summary>Cost of walking against the level, with the same floor.</summary>
    /// <param name="gradient">Rise over run.</param>
    public static double WalkingRatio(double gradient) =>
        Math.Max(Walking(gradient) / WalkingOnTheLevel, DownhillFloor);

    private static double Polynomial(
        double gradient,
        double a,
        double b,
        double c,
        double d,
        double e,
        double f
    )
    {
        var g = Math.Clamp(gradient, -Steepest, Steepest);
        return ((((a * g + b) * g + c) * g + d) * g + e) * g + f;
    }
}
