using Practice.Handouts.Blocks;

namespace Practice.Handouts.Paper.Layout;

/// <summary>A slab a line; the first two lines stay together, and so do the last two.</summary>
internal static class ParagraphLayout
{
    public static List<Slab> Lay(Paragraph paragraph, Setting setting, double width)
    {
        var (theme, type) = (setting.Theme, setting.Type);
        return paragraph.IsQuiet
            ? Lines(paragraph.Words, type.Small, Inks.Only(theme.Soft), setting, width)
            : Lines(paragraph.Words, type.Body, setting.OnSheet, setting, width);
    }

    public static List<Slab> Lines(
        Words words,
        TextStyle style,
        Inks inks,
        Setting setting,
        double width
    )
    {
        var canvas = setting.Canvas;
        var text = new TextBox(canvas, words, width, style);
        var last = text.LineCount - 1;
        return
        [
            .. Enumerable
                .Range(0, text.LineCount)
                .Select(line => new Slab
                {
                    Height = text.LineHeight,
                    Before = line == 0 ? setting.Type.Space(4) : 0,
                    KeepsWithNext = line < last && (line == 0 || line == last - 1),
                    Draw = (x, y) =>
                    {
                        if (line == 0)
                            canvas.Begin(new("P"));
                        text.DrawLine(line, x, y, inks);
                        if (line == last)
                            canvas.End();
                    },
                }),
        ];
    }
}
