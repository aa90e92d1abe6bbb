using System.Collections.Immutable;
using Practice.Handouts.Blocks;
using Practice.Handouts.Paper;

namespace Practice.Handouts;

/// <summary>The head and foot of a paper's first page, for showing them elsewhere than on paper.</summary>
/// <param name="Cover">The band at the top.</param>
/// <param name="InShort">The row of facts below it; null for none.</param>
/// <param name="Foot">The lines at the foot.</param>
/// <param name="Accent">Colour of the band, <c>#RRGGBB</c>.</param>
/// <param name="OnAccent">Colour of words on it.</param>
/// <param name="OnAccentSoft">Colour of quieter words on it.</param>
/// <param name="AccentText">The accent as words on white.</param>
public sealed record FirstPage(
    Cover Cover,
    Facts? InShort,
    ImmutableArray<string> Foot,
    string Accent,
    string OnAccent,
    string OnAccentSoft,
    string AccentText
)
{
    /// <summary>The first page of a paper that begins with a cover.</summary>
    public static FirstPage Of(HandoutDoc doc)
    {
        ArgumentNullException.ThrowIfNull(doc);
        var theme = Theme.Of(doc.Practice.Accent);
        return new(
            doc.Blocks.OfType<Cover>().First(),
            doc.Blocks.OfType<Facts>().FirstOrDefault(),
            doc.Foot,
            $"{theme.Accent}",
            $"{theme.OnAccent}",
            $"{theme.OnAccentSoft}",
            $"{theme.AccentText}"
        );
    }
}
