using System.Collections.Immutable;
using NodaTime;

namespace Practice.Domain.Plans.Weeks;

/// <summary>
/// Moves sittings out of the hours on the road: to half an hour before leaving or half an hour after arriving, whichever
/// is nearer, an hour apart from one another. Sittings outside those hours stay. Own rule.
/// </summary>
public static class TravelShift
{
    private const int Margin = 30;
    private const int Apart = 60;

    // nobody eats at four in the morning or at midnight to be neat
    private const int EarliestLeaving = 8 * 60;
    private const int LatestArriving = 21 * 60;

    /// <summary>The sittings with new times, in their order.</summary>
    public static ImmutableArray<Occasion> Apply(ImmutableArray<Occasion> occasions, Travel travel)
    {
        ArgumentNullException.ThrowIfNull(travel);
        var (leave, arrive) = (Minutes(travel.From), Minutes(travel.To));
        var times = occasions.Select(o => Minutes(o.Time)).ToArray();
        var isMoved = times.Select(t => t > leave - Margin && t < arrive + Margin).ToArray();
        var before = Enumerable
            .Range(0, times.Length)
            .Where(i =>
                isMoved[i]
                && leave >= EarliestLeaving
                && (times[i] - leave <= arrive - times[i] || arrive > LatestArriving)
            )
            .ToList();
        var after = Enumerable
            .Range(0, times.Length)
            .Where(i => isMoved[i] && !before.Contains(i))
            .ToList();
        // the last before leaving is the nearest; earlier ones go further back, and push nothing that stays
        for (var n = 0; n < before.Count; n++)
            times[before[^(n + 1)]] = leave - Margin - n * Apart;
        for (var n = 0; n < after.Count; n++)
            times[after[n]] = arrive + Margin + n * Apart;
        for (var i = after.Count > 0 ? after[^1] + 1 : times.Length; i < times.Length; i++)
            times[i] = Math.Max(times[i], times[i - 1] + Apart);
        for (var i = before.Count > 0 ? before[0] - 1 : -1; i >= 0; i--)
            times[i] = Math.Min(times[i], times[i + 1] - Apart);
        return [.. occasions.Select((o, i) => o with { Time = Time(times[i]) })];
    }

    private static int Minutes(LocalTime time) => time.Hour * 60 + time.Minute;

    private static LocalTime Time(int minutes) =>
        LocalTime.FromMinutesSinceMidnight(Math.Clamp(minutes, 0, 1439));
}
