using System.Globalization;
using Practice.Domain.Targets;
using Practice.Web.Parts;
using Practice.Web.Parts.Plots;

namespace Practice.Web.Features.Plans;

/// <summary>The expected glycogen curve as a drawing and in words.</summary>
internal static class GlycogenWords
{
    private const decimal MarkEveryHours = 12m;

    public static List<PlotPoint> Points(LoadingTargets targets) =>
        [
            .. targets.Glycogen.Select(p => new PlotPoint(
                (double)p.Hour,
                (double)p.Expected,
                (double)p.Low,
                (double)p.High
            )),
        ];

    public static List<PlotMark> Marks(LoadingTargets targets) =>
        [
            .. targets
                .Glycogen.Where(p => p.Hour % MarkEveryHours == 0)
                .Select(p => new PlotMark(
                    (double)p.Hour,
                    p.Hour == 0
                        ? "first meal"
                        : string.Create(CultureInfo.InvariantCulture, $"{p.Hour:0} h")
                )),
        ];

    public static string Sentence(LoadingTargets targets)
    {
        var (first, last) = (targets.Glycogen[0], targets.Glycogen[^1]);
        return $"Expected to rise from {Say.Number(first.Expected)} to {Say.Number(last.Expected)} "
            + $"({Say.Number(last.Low)}–{Say.Number(last.High)}) by the end of the window. "
            + "A model to explain, not to prescribe.";
    }
}
