using Practice.Domain.Practices;
using Practice.Handouts.Blocks;

namespace Practice.Handouts.Paper.Layout;

/// <summary>The squares at the left, large enough for an old phone, and the words beside them.</summary>
internal static class CameraCodeLayout
{
    private const double Side = 92;

    public static Slab Lay(CameraCode code, Setting setting, double width)
    {
        var (canvas, theme, type) = (setting.Canvas, setting.Theme, setting.Type);
        var side = type.Gentle(Side);
        var left = side + type.Gentle(12);
        var title = new TextBox(canvas, code.Title, width - left, type.Heading3);
        var text = new TextBox(canvas, code.Text, width - left, type.Body);
        var words = title.Height + text.Height;
        var height = Math.Max(side, words);
        return new()
        {
            Height = height,
            Before = type.Gentle(10),
            Draw = (x, y) =>
            {
                canvas.Figure(
                    code.Alt,
                    new(x, y, side, side),
                    () => Squares(code.Code, canvas, x, y, side)
                );
                var top = y + (height - words) / 2;
                canvas.Tagged(
                    new("H3"),
                    () => title.Draw(x + left, top, Inks.Only(theme.AccentText))
                );
                canvas.Tagged(
                    new("P"),
                    () => text.Draw(x + left, top + title.Height, setting.OnSheet)
                );
            },
        };
    }

    // neighbours in a row are one bar: fewer shapes, and no hairlines between them
    private static void Squares(QrSquares code, ICanvas canvas, double x, double y, double side)
    {
        var one = side / code.Size;
        canvas.Fill(new(x, y, side, side), Colour.White);
        for (var row = 0; row < code.Size; row++)
        for (var from = 0; from < code.Size; from++)
        {
            if (!code.Dark[row][from])
                continue;
            var to = from;
            while (to < code.Size && code.Dark[row][to])
                to++;
            canvas.Fill(
                new(x + from * one, y + row * one, (to - from) * one, one),
                Colour.Parse("#000000")
            );
            from = to;
        }
    }
}
