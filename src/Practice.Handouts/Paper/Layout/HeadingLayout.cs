using Practice.Handouts.Blocks;

namespace Practice.Handouts.Paper.Layout;

internal static class HeadingLayout
{
    public static Slab Lay(Heading heading, Setting setting, double width)
    {
        var (canvas, theme, type) = (setting.Canvas, setting.Theme, setting.Type);
        var isSection = heading.Level == 2;
        var text = new TextBox(
            canvas,
            heading.Text,
            width,
            isSection ? type.Heading2 : type.Heading3
        );
        return new()
        {
            Height = text.Height + (isSection ? 3 : 1),
            Before = type.Gentle(isSection ? 17 : 9),
            KeepsWithNext = true,
            BeginsPage = heading.NewPage,
            Draw = (x, y) =>
            {
                canvas.Bookmark(heading.Text, heading.Level);
                canvas.Tagged(
                    new("H" + heading.Level),
                    () => text.Draw(x, y, Inks.Only(isSection ? theme.Ink : theme.AccentText))
                );
            },
        };
    }
}
