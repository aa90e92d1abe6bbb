using Practice.Handouts.Blocks;
using Practice.Handouts.Paper.Layout;

namespace Practice.Handouts.Paper;

/// <summary>Lays a paper out and draws it.</summary>
internal static class Press
{
    public static void Print(HandoutDoc doc, ICanvas canvas)
    {
        HeadingOrder.Check(doc);
        var page = PageFrame.Of(doc.Paper);
        var setting = new Setting(
            canvas,
            Theme.Of(doc.Brand.AccentHex),
            doc.IsLargePrint ? TypeScale.Large : TypeScale.Usual,
            page,
            doc.Brand
        );
        var pages = Paginator.Paginate(Flow.Lay(doc.Blocks, setting, page.BodyWidth), page);
        for (var i = 0; i < pages.Count; i++)
        {
            canvas.BeginPage(page.Width, page.Height);
            foreach (var placed in pages[i])
                placed.Draw(PageFrame.Margin, placed.Top);
            PageFurniture.Draw(doc, setting, i + 1, pages.Count);
        }
    }
}
