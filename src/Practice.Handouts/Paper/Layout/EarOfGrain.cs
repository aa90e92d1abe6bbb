using Practice.Domain.Practices;

namespace Practice.Handouts.Paper.Layout;

/// <summary>Our ornament: an ear of grain, drawn from ellipses.</summary>
internal static class EarOfGrain
{
    private const int Pairs = 6;

    /// <summary>Draws it from the foot of a band to its head.</summary>
    public static void Draw(ICanvas canvas, double x, double height, Colour colour)
    {
        var step = height / (Pairs + 1.6);
        var (length, thick) = (step * 1.75, step * 0.72);
        for (var i = 0; i < Pairs; i++)
        {
            var y = height - (i + 0.9) * step;
            var lean = 52 - i * 3;
            Grain(x - length * 0.42, y, lean);
            Grain(x + length * 0.42, y, -lean);
        }
        Grain(x, step * 0.9, -90);
        canvas.Line(x, step, x, height, colour, 2);

        void Grain(double cx, double cy, double degrees) =>
            canvas.Ellipse(new(cx - length / 2, cy - thick / 2, length, thick), colour, degrees);
    }
}
