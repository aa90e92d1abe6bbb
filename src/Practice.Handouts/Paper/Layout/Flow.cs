using Practice.Handouts.Blocks;

namespace Practice.Handouts.Paper.Layout;

/// <summary>Blocks one below the other.</summary>
internal static class Flow
{
    public static List<Slab> Lay(IEnumerable<Block> blocks, Setting setting, double width) =>
        [.. blocks.SelectMany(b => Lay(b, setting, width))];

    private static IReadOnlyList<Slab> Lay(Block block, Setting setting, double width) =>
        block switch
        {
            Cover cover => [CoverLayout.Lay(cover, setting)],
            Facts facts => FactsLayout.Lay(facts, setting),
            Heading heading => [HeadingLayout.Lay(heading, setting, width)],
            Paragraph paragraph => ParagraphLayout.Lay(paragraph, setting, width),
            Bullets bullets => BulletsLayout.Lay(bullets, setting, width),
            Quote quote => QuoteLayout.Lay(quote, setting, width),
            Callout callout => CalloutLayout.Lay(callout, setting, width),
            Timeline line => TimelineLayout.Lay(line, setting, width),
            BarChart chart => [BarChartLayout.Lay(chart, setting, width)],
            BandChart chart => [BandChartLayout.Lay(chart, setting, width)],
            Table table => new TableLayout(table, setting, width).Lay(),
            CheckList list => CheckListLayout.Lay(list, setting, width),
            ScoreBoxes boxes => ScoreBoxesLayout.Lay(boxes, setting, width),
            CameraCode code => [CameraCodeLayout.Lay(code, setting, width)],
            NoteLines lines => [NoteLinesLayout.Lay(lines, setting, width)],
            SideBySide side => SideBySideLayout.Lay(side, setting, width),
            Together together => Keep(Lay(together.Blocks, setting, width)),
            _ => throw new NotSupportedException($"No layout for {block.GetType().Name}."),
        };

    private static List<Slab> Keep(List<Slab> slabs)
    {
        if (slabs.Count > 0)
            slabs[0].Together = Slab.HeightOf(slabs);
        return slabs;
    }
}
