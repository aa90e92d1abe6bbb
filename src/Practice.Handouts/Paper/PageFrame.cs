using Practice.Domain.Practices;

namespace Practice.Handouts.Paper;

/// <summary>A page and its margins, pt.</summary>
internal sealed record PageFrame(double Width, double Height, double FootTop)
{
    private const double PointsPerMm = 72 / 25.4;

    public const double Margin = 17 * PointsPerMm;

    private const double LowerEdge = 9 * PointsPerMm;

    /// <param name="paper">What is printed on.</param>
    /// <param name="foot">Height of the running foot, pt.</param>
    public static PageFrame Of(PaperSize paper, double foot = 0) =>
        paper == PaperSize.Letter
            ? Of(612, 792, foot)
            : Of(210 * PointsPerMm, 297 * PointsPerMm, foot);

    private static PageFrame Of(double width, double height, double foot) =>
        new(width, height, height - LowerEdge - foot);

    public double BodyWidth => Width - 2 * Margin;

    public const double BodyTop = Margin;

    public double BodyBottom => FootTop - 17;

    public double BodyHeight => BodyBottom - BodyTop;
}
