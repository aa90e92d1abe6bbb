using NodaTime;

namespace Practice.Domain.Plans.Weeks;

/// <summary>A moment in the race's clock and in the client's own, where they differ.</summary>
/// <param name="AtRace">In the race's clock.</param>
/// <param name="AtHome">In the client's; null where both clocks show the same.</param>
public sealed record BothClocks(LocalDateTime AtRace, LocalDateTime? AtHome)
{
    /// <summary>The two clocks at a moment of the race's clock; a time skipped by a change of the clocks moves on.</summary>
    /// <param name="plan">The plan, for its zones.</param>
    /// <param name="atRace">The moment in the race's clock.</param>
    public static BothClocks Of(RaceWeekPlan plan, LocalDateTime atRace)
    {
        ArgumentNullException.ThrowIfNull(plan);
        if (
            plan.Week?.ClientZoneId is not { } home
            || DateTimeZoneProviders.Tzdb.GetZoneOrNull(home) is not { } homeZone
            || DateTimeZoneProviders.Tzdb.GetZoneOrNull(plan.Header.ZoneId) is not { } raceZone
        )
            return new(atRace, null);
        var atHome = atRace.InZoneLeniently(raceZone).WithZone(homeZone).LocalDateTime;
        return new(atRace, atHome == atRace ? null : atHome);
    }
}
