using Practice.Handouts.Blocks;

namespace Practice.Handouts.Paper.Layout;

/// <summary>The rows of one group with their head beside them.</summary>
internal sealed class TableGroup(
    RowGroup group,
    Table table,
    TableColumns columns,
    Setting setting,
    double width,
    double padding,
    RunningHead running
)
{
    /// <summary>Lines of a row from one to another: all of them, unless the row is taller than a page.</summary>
    private sealed record Strip(IReadOnlyList<TextBox> Cells, int From, int To, double Height);

    private readonly ICanvas _canvas = setting.Canvas;
    private readonly Theme _theme = setting.Theme;

    public IEnumerable<Slab> Lay(double largest)
    {
        var head = new GroupHeadBox(group.Head, setting, columns.RoomOf(0));
        var strips = group.Rows.SelectMany(Strips).ToList();
        // an empty sitting still has its head
        if (strips.Count == 0)
            strips.Add(new([], 0, 0, 0));
        var outer = padding * 1.6;
        var missing = head.Height + 2 * padding - strips.Sum(s => s.Height);
        strips[^1] = strips[^1] with { Height = strips[^1].Height + Math.Max(0, missing) };
        var together = strips.Sum(s => s.Height) + 2 * outer <= largest;
        return strips.Select(
            (strip, i) =>
            {
                var (isFirst, isLast) = (i == 0, i == strips.Count - 1);
                var above = isFirst ? outer : 0;
                return new Slab
                {
                    Height = above + strip.Height + (isLast ? outer : 0),
                    Head = running,
                    KeepsWithNext = together && !isLast,
                    Draw = (x, y) =>
                    {
                        Rule(x, y, isFirst);
                        _canvas.Begin(new("TR"));
                        if (isFirst)
                            _canvas.Tagged(
                                new("TH", Scope: "Row", RowSpan: strips.Count),
                                () => head.Draw(x, y + above + padding)
                            );
                        DrawCells(strip, x, y + above + padding);
                        _canvas.End();
                    },
                };
            }
        );
    }

    private IEnumerable<Strip> Strips(System.Collections.Immutable.ImmutableArray<Words> row)
    {
        var cells = row.Select(
                (words, i) =>
                    new TextBox(
                        _canvas,
                        words,
                        columns.RoomOf(i + 1),
                        setting.Type.Cell with
                        {
                            IsFigure = table.Columns[i + 1].IsFigure,
                        }
                    )
            )
            .ToList();
        var lines = cells.Max(c => c.LineCount);
        var lineHeight = cells[0].LineHeight;
        var most = (int)((setting.Page.BodyHeight * 0.8 - 4 * padding) / lineHeight);
        for (var from = 0; from < lines; from += most)
        {
            var to = Math.Min(lines, from + most);
            yield return new(cells, from, to, (to - from) * lineHeight + 2 * padding);
        }
    }

    private void Rule(double x, double y, bool isFirst) =>
        _canvas.Decoration(() =>
        {
            if (isFirst)
                _canvas.Line(x, y, x + width, y, _theme.Hairline, 0.9);
            else
                _canvas.Line(x + columns.LeftOf(1), y, x + width, y, _theme.Hairline, 0.35);
        });

    private void DrawCells(Strip strip, double x, double y)
    {
        for (var i = 0; i < strip.Cells.Count; i++)
        {
            var (cell, column) = (strip.Cells[i], i + 1);
            var left = x + columns.LeftOf(column);
            _canvas.Tagged(
                new("TD"),
                () =>
                {
                    for (var line = strip.From; line < Math.Min(strip.To, cell.LineCount); line++)
                        cell.DrawLine(
                            line,
                            left,
                            y + (line - strip.From) * cell.LineHeight,
                            setting.OnSheet,
                            TableLayout.AlignOf(table.Columns[column])
                        );
                }
            );
        }
    }
}
