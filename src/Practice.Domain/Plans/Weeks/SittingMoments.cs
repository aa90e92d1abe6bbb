using NodaTime;

namespace Practice.Domain.Plans.Weeks;

/// <summary>When sittings are: a day's sittings follow one another, past midnight too.</summary>
public static class SittingMoments
{
    /// <summary>The moment of a sitting in the race's clock.</summary>
    public static LocalDateTime MomentOf(this PlanDay day, Occasion occasion)
    {
        ArgumentNullException.ThrowIfNull(day);
        ArgumentNullException.ThrowIfNull(occasion);
        var afterMidnight =
            occasion.Time < day.Occasions[0].Time && occasion.Kind > day.Occasions[0].Kind;
        return day.Date.PlusDays(afterMidnight ? 1 : 0).At(occasion.Time);
    }
}
