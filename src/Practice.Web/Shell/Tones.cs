using Practice.Domain.Practices;

namespace Practice.Web.Shell;

/// <summary>
/// The colours of one face of the screens, light or dark. Paper, ink and grain are ours; the accent is the practice's,
/// moved to the nearest shade that can be read.
/// </summary>
public sealed record Tones
{
    /// <summary>The accent until a practice sets its own.</summary>
    public static Colour DefaultAccent { get; } = Colour.Parse("#0B6E62");

    public required Colour Paper { get; init; }
    public required Colour Card { get; init; }

    /// <summary>Ground of what lies deeper than a card: meter tracks, wells, table heads.</summary>
    public required Colour Well { get; init; }
    public required Colour Ink { get; init; }
    public required Colour SoftInk { get; init; }
    public required Colour Hairline { get; init; }

    /// <summary>Edge of what can be typed into: must be seen, so darker than a hairline.</summary>
    public required Colour Edge { get; init; }
    public required Colour Accent { get; init; }
    public required Colour Good { get; init; }
    public required Colour Watch { get; init; }
    public required Colour Stop { get; init; }
    public required Colour Note { get; init; }

    /// <summary>Text on a filled accent.</summary>
    public Colour OnAccent => Accent.TextOn();

    public static Tones Light(Colour accent)
    {
        var (paper, card, well) = (
            Colour.Parse("#FAF7F1"),
            Colour.Parse("#FFFFFF"),
            Colour.Parse("#F2EDE2")
        );
        return new Tones
        {
            Paper = paper,
            Card = card,
            Well = well,
            Ink = Colour.Parse("#22302C"),
            SoftInk = Colour.Parse("#55655F"),
            Hairline = Colour.Parse("#E4DED2"),
            Edge = Colour.Parse("#8F897B"),
            Accent = accent.ReadableOn(well, paper, card),
            Good = Colour.Parse("#2B7449"),
            Watch = Colour.Parse("#8F5C0E"),
            Stop = Colour.Parse("#B3392F"),
            Note = Colour.Parse("#2B6A99"),
        };
    }

    public static Tones Dark(Colour accent)
    {
        var (paper, card, well) = (
            Colour.Parse("#141A18"),
            Colour.Parse("#1C2422"),
            Colour.Parse("#26302D")
        );
        return new Tones
        {
            Paper = paper,
            Card = card,
            Well = well,
            Ink = Colour.Parse("#E8EDE9"),
            SoftInk = Colour.Parse("#A9B6B0"),
            Hairline = Colour.Parse("#2E3936"),
            Edge = Colour.Parse("#71807A"),
            Accent = accent.MixedWith(Colour.White, 0.25).ReadableOn(well, card, paper),
            Good = Colour.Parse("#7CC79A"),
            Watch = Colour.Parse("#E0AC5C"),
            Stop = Colour.Parse("#F0938A"),
            Note = Colour.Parse("#86BBE3"),
        };
    }

    /// <summary>Every colour by the name the style sheets know it by.</summary>
    public IEnumerable<(string Name, Colour Colour)> Named =>
        [
            ("paper", Paper),
            ("card", Card),
            ("well", Well),
            ("ink", Ink),
            ("soft-ink", SoftInk),
            ("hairline", Hairline),
            ("edge", Edge),
            ("accent", Accent),
            ("on-accent", OnAccent),
            ("good", Good),
            ("watch", Watch),
            ("stop", Stop),
            ("note", Note),
        ];
}
