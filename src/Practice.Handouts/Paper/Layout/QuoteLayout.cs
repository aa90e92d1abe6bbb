using Practice.Handouts.Blocks;

namespace Practice.Handouts.Paper.Layout;

internal static class QuoteLayout
{
    public static List<Slab> Lay(Quote quote, Setting setting, double width)
    {
        var (theme, type) = (setting.Theme, setting.Type);
        var panel = new Panel(setting, width, theme.Husk, theme.Accent, "BlockQuote");
        var said = ParagraphLayout.Lines(
            quote.Words,
            type.Lead with
            {
                Face = Face.Italic,
            },
            setting.OnSheet,
            setting,
            panel.InnerWidth
        );
        var by =
            quote.By.Length == 0
                ? []
                : ParagraphLayout.Lines(
                    quote.By,
                    type.Label,
                    Inks.Only(theme.Soft),
                    setting,
                    panel.InnerWidth
                );
        said[^1].KeepsWithNext = by.Count > 0;
        return panel.Around([.. said, .. by]);
    }
}
