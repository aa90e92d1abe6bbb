using Practice.Domain.Practices;

namespace Practice.Handouts.Paper;

/// <summary>What every layout needs to know.</summary>
/// <param name="Canvas">Measures; draws later.</param>
/// <param name="Theme">Colours.</param>
/// <param name="Type">Sizes.</param>
/// <param name="Page">The page.</param>
/// <param name="Practice">The practice.</param>
internal sealed record Setting(
    ICanvas Canvas,
    Theme Theme,
    TypeScale Type,
    PageFrame Page,
    PracticeProfile Practice
)
{
    public Inks OnSheet => new(Theme.Ink, Theme.Soft);
}

/// <summary>The colours of a text.</summary>
/// <param name="Plain">Its ink.</param>
/// <param name="Quiet">Ink of its quiet runs.</param>
internal readonly record struct Inks(Colour Plain, Colour Quiet)
{
    public static Inks Only(Colour colour) => new(colour, colour);
}
