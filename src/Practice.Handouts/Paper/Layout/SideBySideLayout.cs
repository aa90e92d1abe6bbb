using Practice.Handouts.Blocks;

namespace Practice.Handouts.Paper.Layout;

internal static class SideBySideLayout
{
    private const double Gap = 20;

    public static IReadOnlyList<Slab> Lay(SideBySide side, Setting setting, double width)
    {
        if (setting.Type.IsLarge)
            return Stacked(side, setting, width);
        var unit = (width - Gap * (side.Columns.Length - 1)) / side.Columns.Sum(c => c.Weight);
        var columns = side
            .Columns.Select(c =>
                (Width: unit * c.Weight, Slabs: Flow.Lay(c.Blocks, setting, unit * c.Weight))
            )
            .ToList();
        var height = columns.Max(c => Slab.HeightOf(c.Slabs));
        if (height > setting.Page.BodyHeight)
            return Stacked(side, setting, width);
        return
        [
            new()
            {
                Height = height,
                Before = columns.Max(c => c.Slabs[0].Before),
                KeepsWithNext = side.KeepWithNext,
                Draw = (x, y) =>
                {
                    foreach (var column in columns)
                    {
                        Slab.DrawAll(column.Slabs, x, y);
                        x += column.Width + Gap;
                    }
                },
            },
        ];
    }

    private static List<Slab> Stacked(SideBySide side, Setting setting, double width)
    {
        var slabs = Flow.Lay(side.Columns.SelectMany(c => c.Blocks), setting, width);
        slabs[^1].KeepsWithNext |= side.KeepWithNext;
        return slabs;
    }
}
