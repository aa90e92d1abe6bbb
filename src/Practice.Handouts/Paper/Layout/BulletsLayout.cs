using Practice.Handouts.Blocks;

namespace Practice.Handouts.Paper.Layout;

internal static class BulletsLayout
{
    public static List<Slab> Lay(Bullets bullets, Setting setting, double width)
    {
        var (canvas, theme, type) = (setting.Canvas, setting.Theme, setting.Type);
        var indent = type.Space(11);
        var last = bullets.Items.Length - 1;
        return
        [
            .. bullets.Items.Select(
                (item, index) =>
                {
                    var text = new TextBox(canvas, item, width - indent, type.Body);
                    return new Slab
                    {
                        Height = text.Height,
                        Before = type.Space(index == 0 ? 3 : 2.5),
                        Draw = (x, y) =>
                        {
                            if (index == 0)
                                canvas.Begin(new("L"));
                            Mark(x, y + text.LineHeight / 2);
                            canvas.Begin(new("LI"));
                            canvas.Tagged(
                                new("LBody"),
                                () => text.Draw(x + indent, y, setting.OnSheet)
                            );
                            canvas.End();
                            if (index == last)
                                canvas.End();
                        },
                    };
                }
            ),
        ];

        // a grain instead of a dot
        void Mark(double x, double middle)
        {
            var (length, height) = (type.Space(5.2), type.Space(2.6));
            canvas.Decoration(() =>
                canvas.Ellipse(new(x, middle - height / 2, length, height), theme.AccentText, -24)
            );
        }
    }
}
