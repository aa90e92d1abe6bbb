using System.Globalization;
using Practice.Handouts.Blocks;
using Practice.Handouts.Paper.Pdf;

namespace Practice.Handouts.Paper.Layout;

/// <summary>A curve over its band, a dashed one beside it, heights at the left and named places below.</summary>
internal static class BandChartLayout
{
    private const double ScaleWidth = 26;
    private const double Dash = 3.2;
    private const double Step = 100;

    public static Slab Lay(BandChart chart, Setting setting, double width)
    {
        var (canvas, theme, type) = (setting.Canvas, setting.Theme, setting.Type);
        var labels = new TextStyle(Face.Regular, type.Space(6.6), 1.25);
        var title = new TextBox(canvas, chart.Title, width, type.Label);
        var legend = new TextBox(canvas, chart.Legend, width, labels);
        var tall = type.Gentle(104);
        var top = title.Height + 6;
        var lineHeight = labels.Size * labels.Leading;
        var height = top + tall + 3 + lineHeight + 4 + legend.Height;
        var highest = Step * Math.Ceiling(chart.Points.Max(p => Math.Max(p.High, p.Value)) / Step);
        var (from, to) = (chart.Points[0].At, chart.Points[^1].At);
        return new()
        {
            Height = height,
            Before = 4,
            Draw = (x, y) =>
            {
                double X(double at) =>
                    x + ScaleWidth + (width - ScaleWidth) * (at - from) / (to - from);
                double Y(double value) => y + top + tall * (1 - Math.Max(0, value) / highest);
                canvas.Figure(
                    chart.Alt,
                    new(x, y, width, height),
                    () =>
                    {
                        title.Draw(x, y, Inks.Only(theme.Soft));
                        canvas.Polygon(
                            [
                                .. chart.Points.Select(p => (X(p.At), Y(p.High))),
                                .. chart.Points.Reverse().Select(p => (X(p.At), Y(p.Low))),
                            ],
                            theme.Grain
                        );
                        for (var value = 0.0; value <= highest; value += Step)
                            Scale(value, x, Y(value));
                        foreach (var mark in chart.Marks)
                            Mark(mark, X(mark.At), y + top);
                        Curve([.. chart.Other.Select(p => (X(p.At), Y(p.Value)))], isDashed: true);
                        Curve(
                            [.. chart.Points.Select(p => (X(p.At), Y(p.Value)))],
                            isDashed: false
                        );
                        legend.Draw(x, y + height - legend.Height, Inks.Only(theme.Soft));
                    }
                );
            },
        };

        void Scale(double value, double x, double y)
        {
            canvas.Line(x + ScaleWidth, y, x + width, y, theme.Hairline, 0.5);
            new TextBox(
                canvas,
                value.ToString("0", CultureInfo.InvariantCulture),
                ScaleWidth - 5,
                labels with
                {
                    IsFigure = true,
                }
            ).Draw(x, y - lineHeight / 2, Inks.Only(theme.Soft), Align.Right);
        }

        void Mark(BandMark mark, double x, double plotTop)
        {
            canvas.Line(x, plotTop, x, plotTop + tall, theme.Hairline, 0.5);
            const double room = 60;
            var (left, align) =
                mark.At <= from ? (x, Align.Left)
                : mark.At >= to ? (x - room, Align.Right)
                : (x - room / 2, Align.Centre);
            new TextBox(canvas, mark.Label, room, labels).Draw(
                left,
                plotTop + tall + 3,
                Inks.Only(theme.Soft),
                align
            );
        }

        void Curve(IReadOnlyList<(double X, double Y)> line, bool isDashed)
        {
            foreach (var (a, b) in isDashed ? Dashes(line) : line.Zip(line.Skip(1)))
                canvas.Line(
                    a.X,
                    a.Y,
                    b.X,
                    b.Y,
                    isDashed ? theme.Ink : theme.AccentShape,
                    isDashed ? 0.9 : 1.6
                );
        }
    }

    /// <summary>Every other piece of a line, cut into pieces of one length.</summary>
    private static IEnumerable<((double X, double Y), (double X, double Y))> Dashes(
        IReadOnlyList<(double X, double Y)> line
    )
    {
        var gone = 0.0;
        foreach (var (a, b) in line.Zip(line.Skip(1)))
        {
            var length = Math.Sqrt((b.X - a.X) * (b.X - a.X) + (b.Y - a.Y) * (b.Y - a.Y));
            (double X, double Y) At(double along) =>
                (a.X + (b.X - a.X) * along / length, a.Y + (b.Y - a.Y) * along / length);
            for (var from = 0.0; from < length; )
            {
                var piece = (int)Math.Floor((gone + from) / Dash + 1e-9);
                var to = Math.Min(length, (piece + 1) * Dash - gone);
                if (piece % 2 == 0)
                    yield return (At(from), At(to));
                from = to;
            }
            gone += length;
        }
    }
}
