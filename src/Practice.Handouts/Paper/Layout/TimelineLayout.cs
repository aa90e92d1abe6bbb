using Practice.Domain.Practices;
using Practice.Handouts.Blocks;

namespace Practice.Handouts.Paper.Layout;

/// <summary>The race line: moments from left to right; from top to bottom where type is large.</summary>
internal static class TimelineLayout
{
    public static List<Slab> Lay(Timeline line, Setting setting, double width) =>
        setting.Type.IsLarge
            ? [.. line.Items.Select((item, i) => Down(item, i, line.Items.Length, setting, width))]
            : [Across(line, setting, width)];

    private static Slab Across(Timeline line, Setting setting, double width)
    {
        var (canvas, theme) = (setting.Canvas, setting.Theme);
        var step = width / line.Items.Length;
        var items = line.Items.Select(i => new Item(i, setting, step - 12)).ToList();
        var above = items.Max(i => i.When.Height);
        var axis = above + 9;
        return new()
        {
            Height = axis + 9 + items.Max(i => i.What.Height + i.Detail.Height),
            Before = 7,
            Draw = (x, y) =>
            {
                canvas.Decoration(() =>
                {
                    canvas.Line(x + 4, y + axis, x + width - step + 4, y + axis, theme.Grain, 2.4);
                    for (var i = 0; i < items.Count; i++)
                        Mark(setting, line.Items[i], x + i * step + 4.5, y + axis);
                });
                canvas.Begin(new("L"));
                for (var i = 0; i < items.Count; i++)
                    items[i].Draw(x + i * step, y, y + axis + 9);
                canvas.End();
            },
        };
    }

    private static Slab Down(
        Milestone milestone,
        int index,
        int count,
        Setting setting,
        double width
    )
    {
        var (canvas, theme) = (setting.Canvas, setting.Theme);
        var indent = setting.Type.Space(14);
        var item = new Item(milestone, setting, width - indent);
        var middle = item.When.LineHeight / 2;
        var gap = setting.Type.Space(7);
        var height = item.When.Height + item.What.Height + item.Detail.Height;
        return new()
        {
            Height = height,
            Before = gap,
            Draw = (x, y) =>
            {
                canvas.Decoration(() =>
                {
                    if (index < count - 1)
                        canvas.Line(
                            x + 6,
                            y + middle,
                            x + 6,
                            y + height + gap + middle,
                            theme.Grain,
                            2.4
                        );
                    Mark(setting, milestone, x + 6, y + middle);
                });
                if (index == 0)
                    canvas.Begin(new("L"));
                item.Draw(x + indent, y, y + item.When.Height);
                if (index == count - 1)
                    canvas.End();
            },
        };
    }

    private static void Mark(Setting setting, Milestone milestone, double x, double y)
    {
        var (canvas, theme) = (setting.Canvas, setting.Theme);
        void Dot(double radius, Colour colour) =>
            canvas.Ellipse(new(x - radius, y - radius, 2 * radius, 2 * radius), colour);
        Dot(milestone.IsGoal ? 6 : 4.5, theme.AccentText);
        Dot(milestone.IsGoal ? 2.2 : 2.8, theme.Sheet);
    }

    private sealed class Item(Milestone milestone, Setting setting, double width)
    {
        public TextBox When { get; } =
            new(setting.Canvas, milestone.When, width, setting.Type.Label);

        public TextBox What { get; } =
            new(
                setting.Canvas,
                milestone.What,
                width,
                setting.Type.Body with
                {
                    Face = Face.Bold,
                    Leading = 1.3,
                }
            );

        public TextBox Detail { get; } =
            new(setting.Canvas, milestone.Detail, width, setting.Type.Small);

        public void Draw(double x, double top, double below)
        {
            var (canvas, theme) = (setting.Canvas, setting.Theme);
            canvas.Begin(new("LI"));
            canvas.Tagged(new("Lbl"), () => When.Draw(x, top, Inks.Only(theme.AccentText)));
            canvas.Tagged(
                new("LBody"),
                () =>
                {
                    What.Draw(x, below, Inks.Only(theme.Ink));
                    Detail.Draw(x, below + What.Height, Inks.Only(theme.Soft));
                }
            );
            canvas.End();
        }
    }
}
