using Practice.Handouts.Blocks;

namespace Practice.Handouts.Paper.Layout;

/// <summary>A list with empty boxes at its right, each moment named above its column.</summary>
internal static class ScoreBoxesLayout
{
    public static List<Slab> Lay(ScoreBoxes boxes, Setting setting, double width)
    {
        var column = setting.Type.Gentle(52);
        var label = width - column * boxes.Columns.Length;
        var last = boxes.Rows.Length - 1;
        return
        [
            Head(boxes, setting, label, column),
            .. boxes.Rows.Select(
                (row, i) => Row(row, i, last, boxes.Columns.Length, setting, label, column)
            ),
        ];
    }

    private static Slab Head(ScoreBoxes boxes, Setting setting, double label, double column)
    {
        var names = boxes
            .Columns.Select(c => new TextBox(setting.Canvas, c, column - 4, setting.Type.Label))
            .ToList();
        return new()
        {
            Height = names.Max(n => n.Height) + 2,
            Before = setting.Type.Gentle(6),
            KeepsWithNext = true,
            Draw = (x, y) =>
                setting.Canvas.Tagged(
                    new("P"),
                    () =>
                    {
                        for (var i = 0; i < names.Count; i++)
                            names[i]
                                .Draw(
                                    x + label + i * column,
                                    y,
                                    Inks.Only(setting.Theme.Soft),
                                    Align.Centre
                                );
                    }
                ),
        };
    }

    private static Slab Row(
        string words,
        int index,
        int last,
        int columns,
        Setting setting,
        double label,
        double column
    )
    {
        var (canvas, theme, type) = (setting.Canvas, setting.Theme, setting.Type);
        var text = new TextBox(canvas, words, label - 8, type.Cell);
        var (boxWidth, boxHeight) = (type.Gentle(26), type.Gentle(15));
        var height = Math.Max(text.Height, boxHeight) + type.Gentle(5);
        return new()
        {
            Height = height,
            KeepsWithNext = index == 0 && last > 0,
            Draw = (x, y) =>
            {
                canvas.Decoration(() =>
                {
                    for (var i = 0; i < columns; i++)
                        canvas.Outline(
                            new(
                                x + label + i * column + (column - 4 - boxWidth) / 2,
                                y + (height - boxHeight) / 2,
                                boxWidth,
                                boxHeight
                            ),
                            theme.Soft,
                            0.8,
                            2
                        );
                    canvas.Line(
                        x,
                        y + height,
                        x + label + columns * column,
                        y + height,
                        theme.Hairline,
                        0.5
                    );
                });
                if (index == 0)
                    canvas.Begin(new("L"));
                canvas.Begin(new("LI"));
                canvas.Tagged(
                    new("LBody"),
                    () => text.Draw(x, y + (height - text.Height) / 2, setting.OnSheet)
                );
                canvas.End();
                if (index == last)
                    canvas.End();
            },
        };
    }
}
