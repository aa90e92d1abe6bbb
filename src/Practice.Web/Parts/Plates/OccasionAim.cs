using Practice.Domain.Plans;

namespace Practice.Web.Parts.Plates;

/// <summary>Whether a sitting brings the carbohydrate it should, by the rule of <see cref="DayLimits"/>.</summary>
public static class OccasionAim
{
    /// <summary>What is always allowed either way, g; as in <see cref="DayLimits.OccasionTolerance"/>.</summary>
    private const decimal AlwaysAllowedG = 8m;

    public static bool IsOff(Occasion occasion, decimal tolerance) =>
        Math.Abs(occasion.Totals.CarbohydrateG - occasion.CarbohydrateAimG)
        > Math.Max(AlwaysAllowedG, occasion.CarbohydrateAimG * tolerance);
}
