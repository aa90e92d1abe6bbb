using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace Practice.Domain.Tests.Rehearsals;

/// <summary>Stated against found as a small picture; the band is five points to either side.</summary>
internal static class ReliabilityPlot
{
    private const int Left = 52;
    private const int Top = 16;
    private const int Side = 260;

    public static string Of(ImmutableArray<Bin> bins)
    {
        var svg = new StringBuilder();
        Line(
            svg,
            $"""<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 340 330" width="340" height="330" role="img" font-family="sans-serif" font-size="11" fill="#22302C">"""
        );
        Line(
            svg,
            $"<title>Suspect foods: stated chance against the part that are triggers</title>"
        );
        Line(svg, $"""<rect width="340" height="330" fill="#FAF7F1"/>""");
        Line(
            svg,
            $"""<polygon points="{X(0)},{Y(0.05)} {X(0.95)},{Y(1)} {X(1)},{Y(1)} {X(1)},{Y(0.95)} {X(0.05)},{Y(0)} {X(0)},{Y(0)}" fill="#E4DED2"/>"""
        );
        Line(
            svg,
            $"""<path d="M{X(0)} {Y(0)}L{X(1)} {Y(1)}" stroke="#5B6B65" stroke-dasharray="4 3"/>"""
        );
        Line(svg, $"""<path d="M{X(0)} {Y(1)}V{Y(0)}H{X(1)}" fill="none" stroke="#5B6B65"/>""");
        foreach (var tick in (double[])[0, 0.2, 0.4, 0.6, 0.8, 1])
        {
            Line(
                svg,
                $"""<text x="{X(tick)}" y="{Y(0) + 16}" text-anchor="middle">{100 * tick:0}</text>"""
            );
            Line(
                svg,
                $"""<text x="{Left - 8}" y="{Y(tick) + 4}" text-anchor="end">{100 * tick:0}</text>"""
            );
        }
        foreach (var bin in bins)
            Line(
                svg,
                $"""<circle cx="{X(bin.Stated)}" cy="{Y(bin.Found)}" r="4" fill="{(bin.Foods >= Calibration.WellFilled ? "#0B6E62" : "#FAF7F1")}" stroke="#0B6E62"/>"""
            );
        Line(
            svg,
            $"""<text x="{X(0.5)}" y="{Y(0) + 36}" text-anchor="middle">stated chance, %</text>"""
        );
        Line(
            svg,
            $"""<text transform="translate(16 {Y(0.5)}) rotate(-90)" text-anchor="middle">triggers among them, %</text>"""
        );
        Line(svg, $"</svg>");
        return svg.ToString();
    }

    private static string X(double value) => Number(Left + Side * value);

    private static double Y(double value) => Math.Round(Top + Side * (1 - value), 1);

    private static string Number(double value) =>
        value.ToString("0.0", CultureInfo.InvariantCulture);

    private static void Line(StringBuilder svg, FormattableString text) =>
        svg.Append(FormattableString.Invariant(text)).Append('\n');
}
