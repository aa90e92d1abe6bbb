using Practice.Handouts.Blocks;

namespace Practice.Handouts.Paper.Layout;

/// <summary>Facts in rows on a ground that runs to the paper's edges.</summary>
internal static class FactsLayout
{
    private const double Gap = 14;

    public static List<Slab> Lay(Facts facts, Setting setting)
    {
        var perRow = setting.Type.IsLarge ? 2 : Math.Min(5, facts.Items.Length);
        var rows = facts.Items.Chunk(perRow).ToList();
        return
        [
            .. rows.Select(
                (row, index) => Row(row, perRow, index == 0, index == rows.Count - 1, setting)
            ),
        ];
    }

    private static Slab Row(Fact[] facts, int perRow, bool isFirst, bool isLast, Setting setting)
    {
        var (canvas, theme, type) = (setting.Canvas, setting.Theme, setting.Type);
        var width = (setting.Page.BodyWidth - Gap * (perRow - 1)) / perRow;
        var cells = facts
            .Select(f =>
                (
                    Label: new TextBox(canvas, f.Label, width, type.Label),
                    Value: new TextBox(
                        canvas,
                        f.Value,
                        width,
                        new(Face.Bold, type.Gentle(15), 1.3)
                    ),
                    Note: f.Note.Length == 0 ? null : new TextBox(canvas, f.Note, width, type.Small)
                )
            )
            .ToList();
        var padding = type.Gentle(11);
        var content = cells.Max(c => c.Label.Height + c.Value.Height + (c.Note?.Height ?? 0));
        var height = content + padding;
        return new()
        {
            Height = height + (isLast ? padding : 0),
            KeepsWithNext = !isLast,
            Draw = (x, y) =>
            {
                canvas.Decoration(() =>
                    canvas.Fill(
                        new(0, y, setting.Page.Width, height + (isLast ? padding : 0)),
                        theme.Husk
                    )
                );
                if (isFirst)
                    canvas.Begin(new("L"));
                foreach (var cell in cells)
                {
                    var top = y + padding;
                    canvas.Begin(new("LI"));
                    canvas.Tagged(new("Lbl"), () => cell.Label.Draw(x, top, Inks.Only(theme.Soft)));
                    canvas.Tagged(
                        new("LBody"),
                        () =>
                        {
                            top += cell.Label.Height;
                            cell.Value.Draw(x, top, Inks.Only(theme.Ink));
                            top += cell.Value.Height;
                            cell.Note?.Draw(x, top, Inks.Only(theme.Soft));
                        }
                    );
                    canvas.End();
                    x += width + Gap;
                }
                if (isLast)
                    canvas.End();
            },
        };
    }
}
