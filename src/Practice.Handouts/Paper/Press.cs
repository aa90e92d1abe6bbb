using Practice.Handouts.Blocks;
using Practice.Handouts.Paper.Layout;

namespace Practice.Handouts.Paper;

/// <summary>Lays a paper out and draws it.</summary>
internal static class Press
{
    public static void Print(HandoutDoc doc, ICanvas canvas)
    {
        HeadingOrder.Check(doc);
        var type = doc.IsLargePrint ? TypeScale.Large : TypeScale.Usual;
        var furniture = new PageFurniture(doc, canvas, type, PageFrame.Of(doc.Paper).BodyWidth);
        var page = PageFrame.Of(doc.Paper, furniture.FootHeight);
        var setting = new Setting(canvas, Theme.Of(doc.Practice.Accent), type, page, doc.Practice);
        var pages = Paginator.Paginate(Flow.Lay(doc.Blocks, setting, page.BodyWidth), page);
        for (var i = 0; i < pages.Count; i++)
        {
            canvas.BeginPage(page.Width, page.Height);
            foreach (var placed in pages[i])
                placed.Draw(PageFrame.Margin, placed.Top);
            furniture.Draw(setting, i + 1, pages.Count);
        }
    }
}
