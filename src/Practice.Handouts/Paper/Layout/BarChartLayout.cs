using System.Globalization;
using Practice.Handouts.Blocks;

namespace Practice.Handouts.Paper.Layout;

/// <summary>A small skyline: a bar a sitting, a tick where it should end.</summary>
internal static class BarChartLayout
{
    public static Slab Lay(BarChart chart, Setting setting, double width)
    {
        var (canvas, theme, type) = (setting.Canvas, setting.Theme, setting.Type);
        var plot = type.Gentle(44);
        var figures = new TextStyle(Face.SemiBold, type.Space(7.4), 1.3);
        var labels = new TextStyle(Face.Regular, type.Space(6.6), 1.25);
        var step = width / chart.Bars.Length;
        var names = chart.Bars.Select(b => new TextBox(canvas, b.Label, step - 2, labels)).ToList();
        var title = new TextBox(canvas, chart.Title, width, type.Label);
        var legend = new TextBox(canvas, chart.Legend, width - 14, labels);
        var top = title.Height + figures.Size * figures.Leading + 3;
        var height = top + plot + 3 + names.Max(n => n.Height) + 4 + legend.Height;
        var tallest = (double)chart.Bars.Max(b => Math.Max(b.Value, b.Aim));
        double Tall(int value) => tallest == 0 ? 0 : plot * value / tallest;
        return new()
        {
            Height = height,
            Before = 4,
            Draw = (x, y) =>
                canvas.Figure(
                    chart.Alt,
                    new(x, y, width, height),
                    () =>
                    {
                        title.Draw(x, y, Inks.Only(theme.Soft));
                        var ground = y + top + plot;
                        for (var i = 0; i < chart.Bars.Length; i++)
                            DrawBar(chart.Bars[i], names[i], x + i * step, ground);
                        canvas.Line(x, ground, x + width, ground, theme.Hairline, 0.8);
                        var last = y + height - legend.Height;
                        canvas.Line(
                            x,
                            last + legend.LineHeight / 2,
                            x + 9,
                            last + legend.LineHeight / 2,
                            theme.Ink,
                            1.2
                        );
                        legend.Draw(x + 14, last, Inks.Only(theme.Soft));
                    }
                ),
        };

        void DrawBar(Bar bar, TextBox name, double left, double ground)
        {
            var thick = Math.Min(step * 0.56, type.Gentle(22));
            var x = left + (step - thick) / 2;
            canvas.Fill(
                new(x, ground - Tall(bar.Value), thick, Tall(bar.Value)),
                theme.AccentShape
            );
            var aim = ground - Tall(bar.Aim);
            canvas.Line(x - 2.5, aim, x + thick + 2.5, aim, theme.Sheet, 2.6);
            canvas.Line(x - 2.5, aim, x + thick + 2.5, aim, theme.Ink, 1.2);
            var figure = new TextBox(
                canvas,
                bar.Value.ToString(CultureInfo.InvariantCulture),
                step,
                figures
            );
            var head = ground - Math.Max(Tall(bar.Value), Tall(bar.Aim));
            figure.Draw(left, head - figure.Height - 1.5, Inks.Only(theme.Ink), Align.Centre);
            name.Draw(left + 1, ground + 3, Inks.Only(theme.Soft), Align.Centre);
        }
    }
}
