using Practice.Handouts.Blocks;

namespace Practice.Handouts.Paper.Layout;

/// <summary>
/// A table of groups. The head of a group stands in the first column beside its rows; a group stays on one page where
/// it can; the head of the table comes again on every page.
/// </summary>
internal sealed class TableLayout(Table table, Setting setting, double width)
{
    private const double LargestGroup = 0.6;

    private readonly TableColumns _columns = TableColumns.Of(table, setting, width);
    private readonly ICanvas _canvas = setting.Canvas;
    private readonly Theme _theme = setting.Theme;
    private readonly double _padding = setting.Type.Gentle(2.8);

    public List<Slab> Lay()
    {
        var (header, running) = Header();
        var slabs = new List<Slab> { header };
        foreach (var group in table.Groups)
            slabs.AddRange(
                new TableGroup(group, table, _columns, setting, width, _padding, running).Lay(
                    setting.Page.BodyHeight * LargestGroup
                )
            );
        if (table.Total is { } total)
        {
            slabs[^1].KeepsWithNext = true;
            slabs.Add(TotalRow(total, running));
        }
        slabs.Add(Close());
        slabs[^2].KeepsWithNext = true;
        return slabs;
    }

    private (Slab First, RunningHead Again) Header()
    {
        var cells = table
            .Columns.Select(
                (c, i) => new TextBox(_canvas, c.Header, _columns.RoomOf(i), setting.Type.Label)
            )
            .ToList();
        var height = cells.Max(c => c.Height) + 2 * _padding;

        void Cells(double x, double y, Action<int, Action> each)
        {
            for (var i = 0; i < cells.Count; i++)
            {
                var column = i;
                each(
                    column,
                    () =>
                        cells[column]
                            .Draw(
                                x + _columns.LeftOf(column),
                                y + height - _padding - cells[column].Height,
                                Inks.Only(_theme.Soft),
                                AlignOf(table.Columns[column])
                            )
                );
            }
        }

        var first = new Slab
        {
            Height = height,
            Before = 4,
            KeepsWithNext = true,
            Draw = (x, y) =>
            {
                _canvas.Begin(new("Table", Summary: table.Summary));
                _canvas.Begin(new("THead"));
                _canvas.Begin(new("TR"));
                Cells(x, y, (_, draw) => _canvas.Tagged(new("TH", Scope: "Column"), draw));
                _canvas.End();
                _canvas.End();
                _canvas.Begin(new("TBody"));
            },
        };
        return (
            first,
            new(height, (x, y) => _canvas.RunningText(() => Cells(x, y, (_, draw) => draw())))
        );
    }

    private Slab TotalRow(Total total, RunningHead running)
    {
        var type = setting.Type;
        var style = type.Cell with { Face = Face.Bold };
        var label = new TextBox(_canvas, total.Label, _columns.RoomOf(0), style);
        var value = new TextBox(
            _canvas,
            total.Value,
            width * 0.5,
            style with
            {
                Size = type.Gentle(11.5),
            }
        );
        var left = _columns.LeftOf(1);
        var remark = new TextBox(
            _canvas,
            total.Remark,
            width - left - value.UsedWidth - 2 * TableColumns.Padding,
            type.Cell
        );
        var padding = _padding * 1.9;
        var height = new[] { label.Height, value.Height, remark.Height }.Max() + 2 * padding;
        double Middle(TextBox text, double y) => y + (height - text.Height) / 2;
        return new()
        {
            Height = height,
            Head = running,
            Draw = (x, y) =>
            {
                _canvas.Decoration(() =>
                {
                    _canvas.Fill(new(x - 8, y, width + 16, height), _theme.Husk);
                    _canvas.Line(x - 8, y, x + width + 8, y, _theme.AccentText, 1.2);
                });
                _canvas.Begin(new("TR"));
                _canvas.Tagged(
                    new("TH", Scope: "Row"),
                    () => label.Draw(x, Middle(label, y), Inks.Only(_theme.Ink))
                );
                _canvas.Tagged(
                    new("TD", ColumnSpan: table.Columns.Length - 1),
                    () =>
                    {
                        remark.Draw(x + left, Middle(remark, y), Inks.Only(_theme.Soft));
                        _canvas.Text(
                            " ",
                            x + left + remark.UsedWidth,
                            y + height / 2,
                            new(Face.Regular, 8),
                            _theme.Ink
                        );
                        value.Draw(
                            x + width * 0.5,
                            Middle(value, y),
                            Inks.Only(_theme.Ink),
                            Align.Right
                        );
                    }
                );
                _canvas.End();
            },
        };
    }

    private Slab Close() =>
        new()
        {
            Height = 0,
            Draw = (_, _) =>
            {
                _canvas.End();
                _canvas.End();
            },
        };

    internal static Align AlignOf(Column column) => column.IsRight ? Align.Right : Align.Left;
}
