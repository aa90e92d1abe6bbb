using System.Text;

namespace Practice.Domain.Tests.Rehearsals;

/// <summary>The study in words that the docs print.</summary>
internal static class CalibrationReport
{
    private static readonly World[] Worlds =
    [
        World.AsAssumed,
        new("triggers show in half of the trials", 0.5, 1),
        new("triggers show in nine of ten trials", 0.9, 1),
        new("triggers are half as common", 0.7, 0.5),
        new("triggers are twice as common", 0.7, 2),
    ];

    public static string Tables()
    {
        var text = new StringBuilder();
        Line(text, $"| stated | foods | mean stated | triggers among them |");
        Line(text, $"| --- | ---: | ---: | ---: |");
        foreach (var bin in Calibration.AsAssumed)
            Line(
                text,
                $"| {bin.From:0.0} to {bin.From + 0.1:0.0} | {bin.Foods} | {bin.Stated:0.000} | {bin.Found:0.000} |"
            );
        Line(text, $"");
        Line(text, $"| world | mean gap | worst gap in a well-filled tenth |");
        Line(text, $"| --- | ---: | ---: |");
        foreach (var world in Worlds)
        {
            var bins = Calibration.Study(world);
            Line(
                text,
                $"| {world.Name} | {Calibration.MeanGap(bins):0.000} | {Calibration.WorstGap(bins):0.000} |"
            );
        }
        return text.ToString();
    }

    private static void Line(StringBuilder text, FormattableString line) =>
        text.Append(FormattableString.Invariant(line)).Append('\n');
}
