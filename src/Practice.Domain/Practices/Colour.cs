using System.Globalization;

namespace Practice.Domain.Practices;

/// <summary>
/// A screen colour and the two questions asked of it: can it be read on another, and what does it look like mixed
/// with one. Luminance and contrast as in WCAG 2.2, "relative luminance" and "contrast ratio".
/// </summary>
/// <param name="Red">Red, 0 to 255.</param>
/// <param name="Green">Green, 0 to 255.</param>
/// <param name="Blue">Blue, 0 to 255.</param>
public readonly record struct Colour(byte Red, byte Green, byte Blue)
{
    /// <summary>The least contrast of ordinary text on its ground: WCAG 2.2, criterion 1.4.3.</summary>
    public const double Readable = 4.5;

    /// <summary>The least contrast of a shape that carries meaning: WCAG 2.2, criterion 1.4.11.</summary>
    public const double Visible = 3;

    /// <summary>White.</summary>
    public static Colour White { get; } = new(255, 255, 255);

    /// <summary>Black.</summary>
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

    /// <summary>Reads a colour that the program itself wrote.</summary>
    /// <exception cref="FormatException">It is no colour.</exception>
    public static Colour Parse(string text) =>
        TryParse(text, out var colour)
            ? colour
            : throw new FormatException($"'{text}' is not a colour like #0B6E62.");

    /// <summary>Relative luminance, 0 (black) to 1 (white). Source: WCAG 2.2, "relative luminance".</summary>
    public double Luminance =>
        0.2126 * Linear(Red) + 0.7152 * Linear(Green) + 0.0722 * Linear(Blue);

    /// <summary>Contrast ratio, 1 to 21. Source: WCAG 2.2, "contrast ratio".</summary>
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

    /// <summary>The colour as <c>#RRGGBB</c>.</summary>
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
