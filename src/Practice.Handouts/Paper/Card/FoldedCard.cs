using Practice.Domain.Practices;
using Practice.Handouts.Blocks;
using Practice.Handouts.Paper.Layout;

namespace Practice.Handouts.Paper.Card;

/// <summary>
/// Draws a card on a sheet that is folded twice: the front in the lower right quarter, the back in the lower left, and
/// what they have no room for in the upper quarters, which lie inside. The type is the largest that fits.
/// </summary>
internal static class FoldedCard
{
    private static readonly double[] Factors = [1, 0.9, 0.82, 0.74];

    public static void Print(HandoutDoc doc, ICanvas canvas)
    {
        HeadingOrder.Check(doc);
        var sheet = CardSheet.Of(doc.Paper);
        var sides = doc.Blocks.OfType<CardSide>().ToList();
        var front = sides.Single(s => s.IsFront);
        var back = sides.Single(s => !s.IsFront);
        var fronts =
            Largest(front, doc, canvas, sheet, mostPanels: 1)
            ?? Largest(front, doc, canvas, sheet, mostPanels: 3)
            ?? Panels(front, doc, canvas, sheet, Factors[^1]);
        var backs =
            Largest(back, doc, canvas, sheet, mostPanels: 1)
            ?? Largest(back, doc, canvas, sheet, mostPanels: Math.Max(1, 4 - fronts.Count))
            ?? Panels(back, doc, canvas, sheet, Factors[^1]);
        Draw(doc, canvas, sheet, fronts, backs);
    }

    private static List<List<Placed>>? Largest(
        CardSide side,
        HandoutDoc doc,
        ICanvas canvas,
        CardSheet sheet,
        int mostPanels
    ) =>
        Factors
            .Select(f => Panels(side, doc, canvas, sheet, f))
            .FirstOrDefault(panels => panels.Count <= mostPanels);

    /// <summary>The side cut into panels of the sheet's quarter.</summary>
    private static List<List<Placed>> Panels(
        CardSide side,
        HandoutDoc doc,
        ICanvas canvas,
        CardSheet sheet,
        double factor
    )
    {
        var type = new TypeScale(factor);
        var setting = new Setting(
            canvas,
            Theme.Of(doc.Practice.Accent),
            type,
            PageFrame.Of(doc.Paper),
            doc.Practice
        );
        var slabs = Flow.Lay(side.Blocks, setting, sheet.BodyWidth);
        slabs.Insert(0, Title(side, setting, sheet.BodyWidth));
        var panels = new List<List<Placed>>();
        var y = 0.0;
        foreach (var slab in slabs)
        {
            if (panels.Count == 0 || y + slab.Before + slab.Height > sheet.BodyHeight)
            {
                panels.Add([]);
                y = 0;
                if (panels.Count > 1 && slab.Head is { } head)
                {
                    panels[^1].Add(new(head.Draw, y));
                    y += head.Height;
                }
            }
            else
            {
                y += slab.Before;
            }
            panels[^1].Add(new(slab.Draw, y));
            y += slab.Height;
        }
        return panels;
    }

    private static Slab Title(CardSide side, Setting setting, double width)
    {
        var level = side.IsFront ? 1 : 2;
        var text = new TextBox(
            setting.Canvas,
            side.Title,
            width,
            setting.Type.Heading2 with
            {
                Size = 12.5 * setting.Type.Factor,
            }
        );
        return new()
        {
            Height = text.Height + 2,
            KeepsWithNext = true,
            Draw = (x, y) =>
            {
                setting.Canvas.Bookmark(side.Title, level);
                setting.Canvas.Tagged(
                    new($"H{level}"),
                    () => text.Draw(x, y, Inks.Only(setting.Theme.AccentText))
                );
            },
        };
    }

    private static void Draw(
        HandoutDoc doc,
        ICanvas canvas,
        CardSheet sheet,
        List<List<Placed>> fronts,
        List<List<Placed>> backs
    )
    {
        var theme = Theme.Of(doc.Practice.Accent);
        // reading order: the front with what goes on inside, then the back with what goes on beside it
        var (front, back) = (new Queue<List<Placed>>(fronts), new Queue<List<Placed>>(backs));
        while (front.Count + back.Count > 0)
        {
            canvas.BeginPage(sheet.Width, sheet.Height);
            var free = new Queue<Quarter>([
                Quarter.LowerRight,
                Quarter.UpperLeft,
                Quarter.UpperRight,
            ]);
            while (free.Count > 0 && front.TryDequeue(out var panel))
                DrawPanel(panel, free.Dequeue());
            if (back.TryDequeue(out var behind))
                DrawPanel(behind, Quarter.LowerLeft);
            while (free.Count > 0 && back.TryDequeue(out var inside))
                DrawPanel(inside, free.Dequeue());
            Furniture(doc, canvas, sheet, theme);
        }

        void DrawPanel(List<Placed> panel, Quarter quarter)
        {
            var (x, y) = sheet.BodyOf(quarter);
            foreach (var placed in panel)
                placed.Draw(x, y + placed.Top);
        }
    }

    private static void Furniture(HandoutDoc doc, ICanvas canvas, CardSheet sheet, Theme theme)
    {
        canvas.Decoration(() =>
        {
            canvas.Line(0, sheet.Height / 2, sheet.Width, sheet.Height / 2, theme.Hairline, 0.6);
            canvas.Line(sheet.Width / 2, 0, sheet.Width / 2, sheet.Height, theme.Hairline, 0.6);
            var (x, _) = sheet.BodyOf(Quarter.LowerRight);
            canvas.Fill(
                new(x - CardSheet.Padding, sheet.Height / 2, sheet.Width / 2, 4),
                theme.Accent
            );
        });
        canvas.RunningText(() =>
        {
            var foot = new TextBox(
                canvas,
                doc.Foot[0],
                sheet.BodyWidth,
                new(Face.Regular, 5.6, 1.3)
            );
            foreach (var quarter in (Quarter[])[Quarter.LowerLeft, Quarter.LowerRight])
            {
                var (x, y) = sheet.BodyOf(quarter);
                foot.Draw(x, y + sheet.BodyHeight + 3, Inks.Only(theme.Soft));
            }
        });
    }
}
