using Practice.Domain.Practices;

namespace Practice.Handouts.Paper.Layout;

/// <summary>Slabs on a coloured ground with a bar at their left; breaks across pages wherever the slabs do.</summary>
internal sealed record Panel(Setting Setting, double Width, Colour Ground, Colour Bar, string Tag)
{
    private const double BarWidth = 3;

    private double Padding => Setting.Type.Gentle(10);

    /// <summary>Width left for what stands in the panel.</summary>
    public double InnerWidth => Width - BarWidth - 2 * Padding;

    public List<Slab> Around(IReadOnlyList<Slab> slabs)
    {
        var last = slabs.Count - 1;
        return
        [
            .. slabs.Select(
                (inner, index) =>
                {
                    var above = index == 0 ? Padding : inner.Before;
                    var height = above + inner.Height + (index == last ? Padding : 0);
                    return new Slab
                    {
                        Height = height,
                        Before = index == 0 ? Setting.Type.Gentle(15) : 0,
                        KeepsWithNext = inner.KeepsWithNext,
                        Draw = (x, y) =>
                        {
                            if (index == 0)
                                Setting.Canvas.Begin(new(Tag));
                            DrawGround(x, y, height);
                            inner.Draw(x + BarWidth + Padding, y + above);
                            if (index == last)
                                Setting.Canvas.End();
                        },
                    };
                }
            ),
        ];
    }

    private void DrawGround(double x, double y, double height) =>
        Setting.Canvas.Decoration(() =>
        {
            Setting.Canvas.Fill(new(x, y, Width, height), Ground);
            Setting.Canvas.Fill(new(x, y, BarWidth, height), Bar);
        });
}
