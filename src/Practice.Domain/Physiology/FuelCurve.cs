using System.Collections.Immutable;

namespace Practice.Domain.Physiology;

/// <summary>What the reserve at the finish means.</summary>
public enum FuelOutlook
{
    /// <summary>A quarter of the store or more is left.</summary>
    Enough,

    /// <summary>Less than a quarter is left.</summary>
    Watch,

    /// <summary>Less than 15 % is left.</summary>
    Risk,
}

/// <summary>Glycogen that liver and legs can give at a moment: expected, and what nine guesses of ten lie within.</summary>
/// <param name="Hour">Hours from the start, negative before it.</param>
/// <param name="Km">Kilometres from the start; zero before it.</param>
/// <param name="ExpectedG">Expected, g.</param>
/// <param name="LowG">Lower end of the band, g.</param>
/// <param name="HighG">Upper end of the band, g.</param>
public sealed record FuelPoint(double Hour, double Km, double ExpectedG, double LowG, double HighG);

/// <summary>
/// Glycogen from the first loading meal to the finish. It explains; no target follows it. Own rules around Rapoport
/// 2010: liver three quarters full in the evening and after breakfast, nine tenths of the leg glycogen usable, cost
/// five hundredths above the level rule, flags at 15 and 25 % of the store.
/// </summary>
public sealed record FuelCurve
{
    /// <summary>Share of the leg glycogen that can be used. Own rule.</summary>
    public const double UsableLegShare = 0.90;

    /// <summary>How full the liver is after eating well. Own rule; a loaded liver of 120 g at 70 kg is that full.</summary>
    public const double FedLiverFill = 0.75;

    /// <summary>The curve.</summary>
    public required ImmutableArray<FuelPoint> Points { get; init; }

    /// <summary>Left at the finish as a share of what was there at the start; negative when it ran out.</summary>
    public required double Reserve { get; init; }

    /// <summary>Lower end of the reserve.</summary>
    public required double ReserveLow { get; init; }

    /// <summary>Upper end of the reserve.</summary>
    public required double ReserveHigh { get; init; }

    /// <summary>Where the store is used up, km; null when it reaches the finish.</summary>
    public required double? WallKm { get; init; }

    /// <summary>In what share of the guesses the store does not reach the finish, 0 to 1.</summary>
    public required double WallShare { get; init; }

    /// <summary>What the reserve means.</summary>
    public FuelOutlook Outlook =>
        Reserve switch
        {
            < 0.15 => FuelOutlook.Risk,
            < 0.25 => FuelOutlook.Watch,
            _ => FuelOutlook.Enough,
        };

    /// <summary>The curve of a case. The same case gives the same curve.</summary>
    /// <param name="fuel">The case; its course has at least one leg.</param>
    /// <param name="guesses">How many guesses make the band, 100 or more.</param>
    public static FuelCurve Of(FuelCase fuel, int guesses = 600)
    {
        ArgumentNullException.ThrowIfNull(fuel);
        var legs = LegMuscle.Of(fuel.Sex);
        var times = FuelTimes.Of(fuel);
        var expected = FuelRun.Of(fuel, FuelUnknowns.Expected(legs), times);
        var draws = new Draws(seed: 42195);
        var drawn = new FuelRun[guesses];
        for (var i = 0; i < guesses; i++)
            drawn[i] = FuelRun.Of(fuel, FuelUnknowns.Drawn(legs, draws), times);
        var reserves = Sorted(drawn, r => r.Reserve);
        return new FuelCurve
        {
            Points = [.. times.Moments.Select((moment, i) => Point(moment, i, expected, drawn))],
            Reserve = expected.Reserve,
            ReserveLow = Math.Min(expected.Reserve, At(reserves, Tail)),
            ReserveHigh = Math.Max(expected.Reserve, At(reserves, 1 - Tail)),
            WallKm = expected.WallKm,
            WallShare = drawn.Count(r => r.Reserve < 0) / (double)guesses,
        };
    }

    private const double Tail = 0.05;

    private static FuelPoint Point(FuelMoment moment, int i, FuelRun expected, FuelRun[] drawn)
    {
        var sorted = Sorted(drawn, r => r.Grams[i]);
        var value = Shown(expected.Grams[i]);
        return new(
            moment.Hour,
            moment.Km,
            value,
            Math.Min(value, Shown(At(sorted, Tail))),
            Math.Max(value, Shown(At(sorted, 1 - Tail)))
        );
    }

    /// <summary>Nothing is left once it is used up.</summary>
    private static double Shown(double grams) => Math.Max(0, grams);

    private static double[] Sorted(FuelRun[] drawn, Func<FuelRun, double> value)
    {
        var values = Array.ConvertAll(drawn, r => value(r));
        Array.Sort(values);
        return values;
    }

    private static double At(double[] sorted, double share) =>
        sorted[(int)Math.Round(share * (sorted.Length - 1))];
}
