namespace Practice.Handouts.Paper;

/// <summary>A page and its margins, pt.</summary>
internal sealed record PageFrame(double Width, double Height)
{
    private const double PointsPerMm = 72 / 25.4;

    public const double Margin = 17 * PointsPerMm;

    /// <summary>Room for the running foot, above the lower margin.</summary>
    public const double FootHeight = 24;

    public static PageFrame Of(PaperSize paper) =>
        paper == PaperSize.Letter ? new(612, 792) : new(210 * PointsPerMm, 297 * PointsPerMm);

    public double BodyWidth => Width - 2 * Margin;

    public const double BodyTop = Margin;

    public double BodyBottom => Height - 12 * PointsPerMm - FootHeight;

    public double BodyHeight => BodyBottom - BodyTop;
}
