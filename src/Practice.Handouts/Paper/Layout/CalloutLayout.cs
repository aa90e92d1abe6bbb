using Practice.Handouts.Blocks;

namespace Practice.Handouts.Paper.Layout;

internal static class CalloutLayout
{
    public static List<Slab> Lay(Callout callout, Setting setting, double width)
    {
        var (canvas, theme, type) = (setting.Canvas, setting.Theme, setting.Type);
        var panel = callout.IsCaution
            ? new Panel(setting, width, theme.StopTint, theme.Stop, "Sect")
            : new Panel(setting, width, theme.Husk, theme.Accent, "Sect");
        var title = new TextBox(canvas, callout.Title, panel.InnerWidth, type.Heading3);
        var ink = callout.IsCaution ? theme.Stop : theme.AccentText;
        var head = new Slab
        {
            Height = title.Height,
            KeepsWithNext = true,
            Draw = (x, y) => canvas.Tagged(new("H3"), () => title.Draw(x, y, Inks.Only(ink))),
        };
        return panel.Around([head, .. Flow.Lay(callout.Body, setting, panel.InnerWidth)]);
    }
}
