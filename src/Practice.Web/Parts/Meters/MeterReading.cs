using Practice.Domain.Targets;

namespace Practice.Web.Parts.Meters;

/// <summary>How a value stands against a target.</summary>
public enum Standing
{
    /// <summary>Nothing to hold against it yet.</summary>
    Unknown,

    /// <summary>Within what is allowed.</summary>
    Within,

    /// <summary>Below the allowed band.</summary>
    Below,

    /// <summary>Above the allowed band.</summary>
    Above,
}

/// <summary>A value held against a target: how it stands, in words, and where it lies on the meter's bar.</summary>
public sealed record MeterReading
{
    private MeterReading() { }

    public required Standing Standing { get; init; }

    /// <summary>The value as shown, without its unit; a dash where there is none.</summary>
    public required string ValueText { get; init; }

    /// <summary>What is asked: <c>of 640 g/day</c>, <c>at most 15 g</c>.</summary>
    public required string AskedText { get; init; }

    /// <summary>How it stands, in words: <c>on target</c>, <c>12 g short</c>.</summary>
    public required string StandingText { get; init; }

    /// <summary>Where value, aim and the ends of the band lie on the bar, % of its length.</summary>
    public double? ValueAt { get; init; }
    public double? AimAt { get; init; }
    public required double LowAt { get; init; }
    public required double HighAt { get; init; }

    public static MeterReading Of(Target target, decimal? value)
    {
        var end = End(target, value);
        var standing = Stand(target, value);
        return new MeterReading
        {
            Standing = standing,
            ValueText = value is { } v ? Say.Number(v, target.Decimals) : "–",
            AskedText = Asked(target),
            StandingText = InWords(target, value, standing),
            ValueAt = value is { } at ? Place(at, end) : null,
            AimAt = target.Aim is { } aim ? Place(aim, end) : null,
            LowAt = Place(target.Low ?? 0, end),
            HighAt = target.High is { } high ? Place(high, end) : 100,
        };
    }

    private static Standing Stand(Target target, decimal? value) =>
        value switch
        {
            null => Standing.Unknown,
            var v when Rounded(v.Value) < Rounded(target.Low ?? v.Value) => Standing.Below,
            var v when Rounded(v.Value) > Rounded(target.High ?? v.Value) => Standing.Above,
            _ => Standing.Within,
        };

    /// <summary>A hair past the band that no reader can see is not past it: limits are rounded as they are shown.</summary>
    private static decimal Rounded(decimal value) => Math.Round(value, 3);

    private static string Asked(Target target) =>
        target is { Aim: null, Low: null } or { Aim: null, High: null }
            ? TargetWords.Band(target)
            : $"of {TargetWords.Aim(target)}";

    private static string InWords(Target target, decimal? value, Standing standing) =>
        (standing, value) switch
        {
            (Standing.Below, { } v) => $"{Gap(target, target.Low!.Value - v)} short",
            (Standing.Above, { } v) => $"{Gap(target, v - target.High!.Value)} over",
            (Standing.Within, _) => target.Aim is null ? "within limits" : "on target",
            _ => "nothing planned yet",
        };

    /// <summary>The gap in the unit of an amount: what is missing from 640 g/day is grams.</summary>
    private static string Gap(Target target, decimal gap)
    {
        var smallest = (decimal)Math.Pow(10, -target.Decimals);
        var unit = target.Unit.Replace("/day", "", StringComparison.Ordinal);
        return $"{Say.Number(Math.Max(gap, smallest), target.Decimals)} {unit}";
    }

    /// <summary>Where the bar ends: far enough to see a surplus, near enough to see a shortage.</summary>
    private static decimal End(Target target, decimal? value)
    {
        decimal[] candidates =
        [
            (target.High ?? 0) * 1.2m,
            (target.Aim ?? 0) * 1.2m,
            (target.High is null && target.Aim is null ? target.Low ?? 0 : 0) * 1.6m,
            (value ?? 0) * 1.05m,
        ];
        return candidates.Max() is > 0 and var end ? end : 1;
    }

    private static double Place(decimal value, decimal end) =>
        (double)Math.Clamp(value / end * 100, 0, 100);
}
