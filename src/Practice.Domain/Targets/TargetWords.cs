using System.Globalization;
using Practice.Domain.Quantities;

namespace Practice.Domain.Targets;

/// <summary>Targets in words, rounded for reading, so that screen and paper say the same in every culture.</summary>
public static class TargetWords
{
    /// <summary>Shown where a target sets nothing.</summary>
    public const string None = "none set";

    private const string Minutes = "min";

    /// <summary>The aim with its unit, <c>700 g/day</c>; for a target without one its band.</summary>
    public static string Aim(Target target)
    {
        ArgumentNullException.ThrowIfNull(target);
        return target.Aim is { } aim ? Value(target, aim) : Band(target);
    }

    /// <summary>The allowed band: <c>630–770 g/day</c>, <c>at most 15 g/day</c>, <c>at least 58 g/day</c>.</summary>
    public static string Band(Target target)
    {
        ArgumentNullException.ThrowIfNull(target);
        return (target.Low, target.High) switch
        {
            ({ } low, { } high) when Shown(target, low) == Shown(target, high) => Value(
                target,
                low
            ),
            ({ } low, { } high) => $"{Shown(target, low)}–{Value(target, high)}",
            (null, { } high) => $"at most {Value(target, high)}",
            ({ } low, null) => $"at least {Value(target, low)}",
            _ => None,
        };
    }

    /// <summary>Any value of a target's kind, with its unit.</summary>
    public static string Value(Target target, decimal value)
    {
        ArgumentNullException.ThrowIfNull(target);
        return target.Unit == Minutes ? Time(value) : $"{Shown(target, value)} {target.Unit}";
    }

    /// <summary>A time of minutes as <c>3:15 h</c>, or <c>45 min</c> below an hour.</summary>
    public static string Time(decimal minutes)
    {
        var whole = (int)Math.Round(minutes, MidpointRounding.AwayFromZero);
        return whole < 60
            ? string.Create(CultureInfo.InvariantCulture, $"{whole} min")
            : string.Create(CultureInfo.InvariantCulture, $"{whole / 60}:{whole % 60:00} h");
    }

    private static string Shown(Target target, decimal value) =>
        target.Unit == Minutes ? Time(value) : Rounding.Shown(value, target.Decimals);
}
