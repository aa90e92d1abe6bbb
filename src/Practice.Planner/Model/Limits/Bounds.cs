using Practice.Domain.Plans;

namespace Practice.Planner.Model.Limits;

/// <summary>Limits of days and plates in the small units of the rows.</summary>
internal static class Bounds
{
    public static long Hundredths(decimal grams) => (long)Math.Floor(grams * 100);

    public static long HundredthsUp(decimal grams) => (long)Math.Ceiling(grams * 100);

    /// <summary>Allowed deviation of a sitting's carbohydrate, g: never less than 8 (own rule).</summary>
    public static decimal OccasionToleranceG(Occasion occasion, DayLimits limits) =>
        Math.Max(8m, limits.OccasionTolerance * occasion.CarbohydrateAimG);
}
