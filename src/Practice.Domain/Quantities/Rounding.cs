using System.Globalization;

namespace Practice.Domain.Quantities;

/// <summary>Rounds for people, last of all; nothing is computed from a rounded number.</summary>
public static class Rounding
{
    /// <summary>A number as it is shown, the same in every culture: <c>1.3</c>, <c>700</c>.</summary>
    /// <param name="value">The unrounded number.</param>
    /// <param name="decimals">Decimals to show, 0 or more; halves go away from zero.</param>
    public static string Shown(decimal value, int decimals) =>
        Math.Round(value, decimals, MidpointRounding.AwayFromZero)
            .ToString(
                "F" + decimals.ToString(CultureInfo.InvariantCulture),
                CultureInfo.InvariantCulture
            );

    /// <summary>42.2 km, 10 km: held together.</summary>
    /// <param name="km">Kilometres.</param>
    public static string Distance(decimal km) => $"{Shown(km, km % 1 == 0 ? 0 : 1)}\u00A0km";
}
