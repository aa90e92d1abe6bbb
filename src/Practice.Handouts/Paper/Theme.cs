using Practice.Domain.Practices;

namespace Practice.Handouts.Paper;

/// <summary>
/// The colours of a paper: neutral ink and grain tones of our own, and the accent of the practice. Whatever the accent,
/// text keeps a contrast of 4.5 : 1 to what it stands on.
/// </summary>
internal sealed record Theme
{
    /// <summary>WCAG 2.1, criterion 1.4.3, text of normal size.</summary>
    public const double Readable = Colour.Readable;

    /// <summary>WCAG 2.1, criterion 1.4.11, shapes that carry meaning.</summary>
    public const double Visible = Colour.Visible;

    private const string InkHex = "#22302C";
    private const string GrainHex = "#EFE7D7";

    public Colour Sheet { get; } = Colour.White;
    public Colour Ink { get; } = Colour.Parse(InkHex);
    public Colour Soft { get; } = Colour.Parse("#586761");
    public Colour Hairline { get; } = Colour.Parse("#E4DED2");
    public Colour Husk { get; } = Colour.Parse("#FAF7F1");
    public Colour Grain { get; } = Colour.Parse(GrainHex);
    public Colour Stop { get; } = Colour.Parse("#A3322A");
    public Colour StopTint { get; } = Colour.Parse("#FBF1EF");

    /// <summary>The practice's colour, as surface.</summary>
    public required Colour Accent { get; init; }

    /// <summary>Text on the accent.</summary>
    public required Colour OnAccent { get; init; }

    /// <summary>Quieter text on the accent.</summary>
    public required Colour OnAccentSoft { get; init; }

    /// <summary>Pattern on the accent.</summary>
    public required Colour AccentShade { get; init; }

    /// <summary>The accent as a shape on the sheet.</summary>
    public required Colour AccentShape { get; init; }

    /// <summary>The accent as text on sheet and husk.</summary>
    public required Colour AccentText { get; init; }

    /// <summary>The theme of an accent; our own accent when it is no colour.</summary>
    public static Theme Of(string accentHex)
    {
        var accent = Colour.TryParse(accentHex, out var typed)
            ? typed
            : Colour.Parse(PracticeProfile.DefaultAccent);
        var ink = Colour.Parse(InkHex);
        // between white and ink lies a band of middle tones on which only black can be read
        var on = new[] { Colour.White, ink, Colour.Black }.First(c =>
            c.ContrastWith(accent) >= Readable
        );
        return new()
        {
            Accent = accent,
            OnAccent = on,
            OnAccentSoft = Quieter(on, accent),
            // away from the text, which then reads even better on it
            AccentShade = accent.MixedWith(on == Colour.White ? Colour.Black : Colour.White, 0.12),
            AccentShape = Darker(accent, Colour.White, Visible),
            AccentText = Darker(accent, Colour.Parse(GrainHex), Readable),
        };
    }

    /// <summary>Every text colour with each surface it may stand on.</summary>
    public IEnumerable<(Colour Text, Colour Surface)> Pairs =>
        [
            .. from text in new[] { Ink, Soft, AccentText }
            from surface in new[] { Sheet, Husk, Grain }
            select (text, surface),
            (OnAccent, Accent),
            (OnAccentSoft, Accent),
            (OnAccent, AccentShade),
            (OnAccentSoft, AccentShade),
            (Stop, StopTint),
            (Ink, StopTint),
            (Soft, StopTint),
        ];

    private static Colour Quieter(Colour text, Colour surface)
    {
        var part = 0.22;
        while (part > 0 && text.MixedWith(surface, part).ContrastWith(surface) < Readable)
            part -= 0.02;
        return text.MixedWith(surface, Math.Max(0, part));
    }

    private static Colour Darker(Colour colour, Colour surface, double contrast)
    {
        var darker = colour;
        for (var part = 0.0; darker.ContrastWith(surface) < contrast; part += 0.05)
            darker = colour.MixedWith(Colour.Black, part);
        return darker;
    }
}
