using Practice.Handouts.Blocks;

namespace Practice.Handouts.Paper;

/// <summary>Headings go down one level at a time, as PDF/UA-1 asks (ISO 14289-1, 7.4.2).</summary>
internal static class HeadingOrder
{
    public static void Check(HandoutDoc doc)
    {
        var level = 0;
        foreach (var (next, text) in Headings(doc.Blocks))
        {
            if (next > level + 1)
                throw new InvalidOperationException(
                    $"Heading '{text}' is on level {next} below level {level}."
                );
            level = next;
        }
    }

    private static IEnumerable<(int Level, string Text)> Headings(IEnumerable<Block> blocks) =>
        blocks.SelectMany(block =>
            block switch
            {
                Cover cover => [(1, cover.Title)],
                Heading heading => [(heading.Level, heading.Text)],
                Callout callout => [(3, callout.Title), .. Headings(callout.Body)],
                CheckList list => list.Sections.Select(s => (3, s.Title)),
                SideBySide side => side.Columns.SelectMany(c => Headings(c.Blocks)),
                CardSide side => [(side.IsFront ? 1 : 2, side.Title), .. Headings(side.Blocks)],
                Together together => Headings(together.Blocks),
                _ => Enumerable.Empty<(int, string)>(),
            }
        );
}
