using System.Globalization;

namespace Practice.Handouts.Paper;

/// <summary>A colour in sRGB.</summary>
internal readonly record struct Colour(byte R, byte G, byte B)
{
    public static readonly Colour White = new(255, 255, 255);
    public static readonly Colour Black = new(0, 0, 0);

    public static Colour Hex(string hex) =>
        TryHex(hex) ?? throw new FormatException($"'{hex}' is not a colour like #0B6E62.");

    public static Colour? TryHex(string hex) =>
        hex.Length == 7
        && hex[0] == '#'
        && int.TryParse(
            hex.AsSpan(1),
            NumberStyles.AllowHexSpecifier,
            CultureInfo.InvariantCulture,
            out var rgb
        )
            ? new((byte)(rgb >> 16), (byte)(rgb >> 8), (byte)rgb)
            : null;

    /// <summary>A part of the way to another colour.</summary>
    public Colour Mix(Colour other, double part) =>
        new(Mix(R, other.R, part), Mix(G, other.G, part), Mix(B, other.B, part));

    /// <summary>Contrast ratio, 1 to 21. Source: WCAG 2.1, "contrast ratio" and "relative luminance".</summary>
    public double Contrast(Colour other)
    {
        var (light, dark) = (Luminance, other.Luminance);
        if (light < dark)
            (light, dark) = (dark, light);
        return (light + 0.05) / (dark + 0.05);
    }

    private double Luminance => 0.2126 * Linear(R) + 0.7152 * Linear(G) + 0.0722 * Linear(B);

    private static double Linear(byte channel)
    {
        var c = channel / 255.0;
        return c <= 0.04045 ? c / 12.92 : Math.Pow((c + 0.055) / 1.055, 2.4);
    }

    private static byte Mix(byte from, byte to, double part) =>
        (byte)Math.Round(from + (to - from) * part);
}
