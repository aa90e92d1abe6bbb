namespace Practice.Domain.Practices;

/// <summary>What an accent is good for, by the contrast formula of WCAG 2.2.</summary>
/// <param name="TextOnIt">Black or white, whichever is read on it.</param>
/// <param name="ContrastOfText">Contrast of that text, 4.5 or more for every colour there is.</param>
/// <param name="ContrastOnWhite">Contrast of the accent to white paper, 1 to 21.</param>
public sealed record AccentReading(Colour TextOnIt, double ContrastOfText, double ContrastOnWhite)
{
    /// <summary>Whether lines and bars in it are seen on white paper; papers and screens darken it where not.</summary>
    public bool IsSeenOnWhite => ContrastOnWhite >= Colour.Visible;

    /// <summary>Whether words in it are read on white paper; papers and screens darken it where not.</summary>
    public bool IsReadOnWhite => ContrastOnWhite >= Colour.Readable;

    /// <summary>Reads an accent.</summary>
    public static AccentReading Of(Colour accent)
    {
        var text = accent.TextOn();
        return new(text, text.ContrastWith(accent), accent.ContrastWith(Colour.White));
    }
}
