using System.Collections.Immutable;

namespace Practice.Domain.Physiology;

/// <summary>Carbohydrate taken on the course.</summary>
/// <param name="Hour">When, h from the start.</param>
/// <param name="Grams">Carbohydrate, g.</param>
public sealed record FuelFeed(double Hour, double Grams);

/// <summary>
/// What of the carbohydrate taken on the course is burnt in the muscle's stead: 0.86 of it up to 90 g/h of mixed
/// sugars (Podlogar 2022), 0.75 above; each feed from a quarter of an hour after it until the next one has its turn.
/// The delay and the spreading are our own rule. Checks T12, T13, G17.
/// </summary>
public static class RaceFeeding
{
    /// <summary>From mouth to muscle, h. Own rule.</summary>
    public const double LagHours = 0.25;

    private const double LastFeedHours = 1.0 / 3;
    private const double HighRateGPerHour = 90;

    /// <summary>Share that is burnt at a rate of intake.</summary>
    public static double BurntShare(double gramsPerHour) =>
        gramsPerHour <= HighRateGPerHour ? 0.86 : 0.75;

    /// <summary>Burnt so far, g.</summary>
    /// <param name="feeds">Feeds in order of time.</param>
    /// <param name="hours">Hours from the start.</param>
    /// <param name="raceHours">Length of the race, h, which tells the rate.</param>
    public static double BurntG(ImmutableArray<FuelFeed> feeds, double hours, double raceHours)
    {
        var arrived = feeds.Select(
            (feed, i) =>
            {
                var spread = i + 1 < feeds.Length ? feeds[i + 1].Hour - feed.Hour : LastFeedHours;
                var since = hours - feed.Hour - LagHours;
                return feed.Grams * (spread <= 0 ? Step(since) : Math.Clamp(since / spread, 0, 1));
            }
        );
        return BurntShare(feeds.Sum(f => f.Grams) / raceHours) * arrived.Sum();
    }

    private static double Step(double since) => since >= 0 ? 1 : 0;
}
