using System.Globalization;

namespace Practice.Web.Shell;

/// <summary>
/// A screen colour and the two questions asked of it: can it be read on another, and what does it look like mixed
/// with one. Luminance and contrast as in WCAG 2.2, "relative luminance" and "contrast ratio".
/// </summary>
public readonly record struct Colour(byte Red, byte Green, byte Blue)
{
    /// <summary>The least contrast of ordinary text on its ground.</summary>
    public const double Readable = 4.5;

    public static Colour White { get; } = new(255, 255, 255);

    public static Colour Black { get; } = new(0, 0, 0);

    /// <summary>Reads <c>#RRGGBB</c>; a practice types its accent, so a wrong one is an answer and not an error.</summary>
    public static bool TryParse(string? text, out Colour colour)
    {
        colour = default;
        if (
            text is not ['#', .. { Length: 6 } digits]
            || !int.TryParse(
                digits,
                NumberStyles.AllowHexSpecifier,
                CultureInfo.InvariantCulture,
                out var rgb
            )
        )
            return false;
        colour = new Colour((byte)(rgb >> 16), (byte)(rgb >> 8), (byte)rgb);
        return true;
    }

    public static Colour Parse(string text) =>
        TryParse(text, out var colour)
            ? colour
            : throw new FormatException($"'{text}' is not a colour like #0B6E62.");

    public double Luminance =>
        0.2126 * Linear(Red) + 0.7152 * Linear(Green) + 0.0722 * Linear(Blue);

    public double ContrastWith(Colour other)
    {
        var (a, b) = (Luminance, other.Luminance);
        return (Math.Max(a, b) + 0.05) / (Math.Min(a, b) + 0.05);
    }

    /// <summary>This colour with a share, 0 to 1, of another mixed in.</summary>
    public Colour MixedWith(Colour other, double share) =>
        new(
            Mix(Red, other.Red, share),
            Mix(Green, other.Green, share),
            Mix(Blue, other.Blue, share)
        );

    /// <summary>
    /// The nearest shade of this colour that reads on all the grounds: darkened on light grounds, lightened on dark.
    /// </summary>
    public Colour ReadableOn(params ReadOnlySpan<Colour> grounds)
    {
        var towards = grounds[0].Luminance > 0.18 ? Black : White;
        for (var step = 0; step < 50; step++)
        {
            var shade = MixedWith(towards, step / 50.0);
            if (ReadsOnAll(shade, grounds))
                return shade;
        }
        return towards;
    }

    /// <summary>Black or white, whichever reads better on this.</summary>
    public Colour TextOn() =>
        ContrastWith(White) >= Readable || ContrastWith(White) >= ContrastWith(Black)
            ? White
            : Black;

    public override string ToString() => $"#{Red:X2}{Green:X2}{Blue:X2}";

    private static bool ReadsOnAll(Colour shade, ReadOnlySpan<Colour> grounds)
    {
        foreach (var ground in grounds)
            if (shade.ContrastWith(ground) < Readable)
                return false;
        return true;
    }

    private static double Linear(byte channel)
    {
        var c = channel / 255.0;
        return c <= 0.04045 ? c / 12.92 : Math.Pow((c + 0.055) / 1.055, 2.4);
    }

    private static byte Mix(byte from, byte to, double share) =>
        (byte)Math.Round(from + (to - from) * share);
}
