using Practice.Handouts.Blocks;

namespace Practice.Handouts.Paper.Layout;

internal static class NoteLinesLayout
{
    private const int Fewest = 2;
    private const int Most = 9;

    public static Slab Lay(NoteLines lines, Setting setting, double width)
    {
        var (canvas, theme) = (setting.Canvas, setting.Theme);
        var label = new TextBox(canvas, lines.Label, width, setting.Type.Label);
        var gap = setting.Type.Gentle(22);
        var least = label.Height + Fewest * gap;
        return new()
        {
            Height = least,
            Before = setting.Type.Gentle(16),
            Draw = (x, y) => Draw(x, y, least),
            Fill = Draw,
        };

        void Draw(double x, double y, double height)
        {
            canvas.Tagged(new("P"), () => label.Draw(x, y, Inks.Only(theme.Soft)));
            var count = Math.Min(Most, (int)((height - label.Height) / gap));
            canvas.Decoration(() =>
            {
                for (var i = 1; i <= count; i++)
                {
                    var line = y + label.Height + i * gap;
                    canvas.Line(x, line, x + width, line, theme.Hairline, 0.6);
                }
            });
        }
    }
}
