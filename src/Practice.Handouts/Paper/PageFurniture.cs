using Practice.Handouts.Blocks;

namespace Practice.Handouts.Paper;

/// <summary>What every page bears: whose paper it is, page x of y, who stands behind it.</summary>
internal static class PageFurniture
{
    public static void Draw(HandoutDoc doc, Setting setting, int page, int pages)
    {
        var (canvas, theme, frame) = (setting.Canvas, setting.Theme, setting.Page);
        var style = setting.Type.Running;
        var (left, right) = (PageFrame.Margin, frame.Width - PageFrame.Margin);
        var number = new TextBox(canvas, $"Page {page} of {pages}", frame.BodyWidth, style);
        var foot = new TextBox(
            canvas,
            string.Join('\n', doc.Foot.Where(line => line.Length > 0)),
            frame.BodyWidth - number.UsedWidth - 18,
            style
        );
        var top = frame.BodyBottom + 12;
        canvas.Decoration(() =>
        {
            canvas.Line(left, top - 5, right, top - 5, theme.Hairline, 0.6);
            if (page > 1)
                canvas.Fill(new(0, 0, frame.Width, 4), theme.Accent);
        });
        canvas.RunningText(() =>
        {
            foot.Draw(left, top, Inks.Only(theme.Soft));
            number.Draw(left, top, Inks.Only(theme.Ink), Align.Right);
            if (page > 1)
                new TextBox(canvas, doc.RunningHead, frame.BodyWidth, style).DrawLine(
                    0,
                    left,
                    PageFrame.Margin - style.Size * 2.4,
                    Inks.Only(theme.Soft)
                );
        });
    }
}
