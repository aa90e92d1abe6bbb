namespace Practice.Domain.Plans.Weeks;

/// <summary>What the meals of the race day are called.</summary>
public static class SittingNames
{
    /// <summary>Name of a sitting of the race day.</summary>
    /// <param name="part">Before the start or after the finish.</param>
    /// <param name="day">The day it stands in.</param>
    /// <param name="occasion">The sitting.</param>
    public static string Of(RaceDayPart part, PlanDay day, Occasion occasion)
    {
        ArgumentNullException.ThrowIfNull(day);
        ArgumentNullException.ThrowIfNull(occasion);
        var isFirst = occasion.Kind == day.Occasions[0].Kind;
        var isLast = occasion.Kind == day.Occasions[^1].Kind;
        return part == RaceDayPart.Morning
            ? isLast && !isFirst
                ? "Second small feed"
                : isFirst && day.Occasions.Length > 2
                    ? "Breakfast"
                    : "Pre-race meal"
            : isFirst
                ? "After the finish"
                : isLast
                    ? "Recovery snack"
                    : "Recovery meal";
    }
}
