namespace Practice.Handouts.Paper;

/// <summary>A slab or a running head at its place on a page.</summary>
/// <param name="Draw">Draws it with its top left corner there.</param>
/// <param name="Top">Where, from the top of the page.</param>
internal readonly record struct Placed(Action<double, double> Draw, double Top);

/// <summary>Fills pages with slabs from top to bottom.</summary>
internal static class Paginator
{
    /// <summary>What should stay together moves to a new page only if no more than this part of one is left empty.</summary>
    private const double LargestHole = 0.4;

    public static List<List<Placed>> Paginate(IReadOnlyList<Slab> slabs, PageFrame page)
    {
        var pages = new List<List<Placed>>();
        var y = 0.0;
        for (var i = 0; i < slabs.Count; i++)
        {
            var slab = slabs[i];
            if (slab.Fill is { } fill)
            {
                y += slab.Before;
                var left = page.BodyBottom - y;
                if (left >= slab.Height)
                    pages[^1].Add(new((x, top) => fill(x, top, left), y));
                y = page.BodyBottom;
                continue;
            }
            if (pages.Count == 0 || slab.BeginsPage || MustMove(slabs, i, y, page))
            {
                pages.Add([]);
                y = PageFrame.BodyTop;
                if (slab.Head is { } head)
                {
                    pages[^1].Add(new(head.Draw, y));
                    y += head.Height;
                }
            }
            else
            {
                y += slab.Before;
            }
            pages[^1].Add(new(slab.Draw, y));
            y += slab.Height;
        }
        return pages;
    }

    private static bool MustMove(IReadOnlyList<Slab> slabs, int index, double y, PageFrame page)
    {
        var slab = slabs[index];
        if (y <= PageFrame.BodyTop)
            return false;
        var left = page.BodyBottom - y - slab.Before;
        if (slab.Height > left)
            return true;
        if (
            slab.Together > left
            && slab.Together <= page.BodyHeight
            && left < page.BodyHeight * LargestHole
        )
            return true;
        var chain = ChainHeight(slabs, index);
        return chain > left && chain <= page.BodyHeight;
    }

    private static double ChainHeight(IReadOnlyList<Slab> slabs, int index)
    {
        var height = slabs[index].Height;
        for (var i = index; slabs[i].KeepsWithNext && i + 1 < slabs.Count; i++)
            height += slabs[i + 1].Before + slabs[i + 1].Height;
        return height;
    }
}
