using Practice.Handouts.Blocks;

namespace Practice.Handouts.Paper;

/// <summary>What every page bears: whose paper it is, page x of y, who stands behind it.</summary>
internal sealed class PageFurniture
{
    private readonly HandoutDoc _doc;
    private readonly ICanvas _canvas;
    private readonly TextStyle _style;
    private readonly TextBox _foot;

    public PageFurniture(HandoutDoc doc, ICanvas canvas, TypeScale type, double width)
    {
        (_doc, _canvas, _style) = (doc, canvas, type.Running);
        var number = canvas.Width("Page 99 of 99", new(_style.Face, _style.Size));
        var lines = string.Join('\n', doc.Foot.Where(line => line.Length > 0));
        _foot = new(canvas, lines, width - number - 18, _style);
    }

    public double FootHeight => _foot.Height;

    public void Draw(Setting setting, int page, int pages)
    {
        var (theme, frame) = (setting.Theme, setting.Page);
        var (left, right, top) = (PageFrame.Margin, frame.Width - PageFrame.Margin, frame.FootTop);
        _canvas.Decoration(() =>
        {
            _canvas.Line(left, top - 5, right, top - 5, theme.Hairline, 0.6);
            if (page > 1)
                _canvas.Fill(new(0, 0, frame.Width, 4), theme.Accent);
        });
        _canvas.RunningText(() =>
        {
            _foot.Draw(left, top, Inks.Only(theme.Soft));
            Line($"Page {page} of {pages}").Draw(left, top, Inks.Only(theme.Ink), Align.Right);
            if (page > 1)
                Line(_doc.RunningHead)
                    .DrawLine(0, left, PageFrame.Margin - _style.Size * 2.4, Inks.Only(theme.Soft));
        });

        TextBox Line(string text) => new(_canvas, text, frame.BodyWidth, _style);
    }
}
