using Practice.Domain.Practices;

namespace Practice.Handouts.Paper.Card;

/// <summary>A quarter of a sheet.</summary>
internal enum Quarter
{
    UpperLeft,
    UpperRight,
    LowerLeft,
    LowerRight,
}

/// <summary>A sheet folded to quarters, pt: A4 gives A6.</summary>
internal sealed record CardSheet(double Width, double Height)
{
    private const double PointsPerMm = 72 / 25.4;

    /// <summary>Edge of a quarter; printers leave no less blank at the edge of the sheet.</summary>
    public const double Padding = 7 * PointsPerMm;

    private const double Foot = 14;

    public static CardSheet Of(PaperSize paper) =>
        paper == PaperSize.Letter ? new(612, 792) : new(210 * PointsPerMm, 297 * PointsPerMm);

    public double BodyWidth => Width / 2 - 2 * Padding;

    public double BodyHeight => Height / 2 - 2 * Padding - Foot;

    /// <summary>Top left corner of what is printed in a quarter.</summary>
    public (double X, double Y) BodyOf(Quarter quarter) =>
        (
            Padding + (quarter is Quarter.UpperRight or Quarter.LowerRight ? Width / 2 : 0),
            Padding + (quarter is Quarter.LowerLeft or Quarter.LowerRight ? Height / 2 : 0)
        );
}
