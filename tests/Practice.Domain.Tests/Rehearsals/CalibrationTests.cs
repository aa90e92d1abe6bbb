using System.Runtime.CompilerServices;
using Practice.Domain.Rehearsals;

namespace Practice.Domain.Tests.Rehearsals;

/// <summary>
/// Thousands of made-up clients whose triggers are known: of the foods that are said to be triggers with 30 %, about
/// 30 % must be. The tables and the plot of docs/rehearsals.md are what this study gives.
/// </summary>
public class CalibrationTests
{
    [Fact]
    public void Stated_chances_are_true_within_five_points_wherever_there_are_enough_of_them()
    {
        var filled = Calibration.AsAssumed.Where(b => b.Foods >= Calibration.WellFilled).ToList();

        Assert.True(filled.Count >= 8, $"Only {filled.Count} bins are well filled.");
        Assert.All(filled, b => Assert.InRange(b.Found, b.Stated - 0.05, b.Stated + 0.05));
    }

    [Fact]
    public void The_study_sees_a_wrong_prior() =>
        Assert.True(
            Calibration.WorstGap(Calibration.Study(new World("three times", 0.7, 3))) > 0.05
        );

    [Fact]
    public void The_docs_print_the_tables_of_the_study() =>
        Holds("rehearsals.md", CalibrationReport.Tables(), "suspect-foods-calibration.md");

    [Fact]
    public void The_docs_show_the_plot_of_the_study() =>
        Holds(
            "images/suspect-foods-calibration.svg",
            ReliabilityPlot.Of(Calibration.AsAssumed),
            "suspect-foods-calibration.svg"
        );

    // nothing approves itself: what differs is written beside the tests, for a person to read and to put into the docs
    private static void Holds(
        string file,
        string study,
        string received,
        [CallerFilePath] string here = ""
    )
    {
        var docs = Path.Combine(Path.GetDirectoryName(here)!, "..", "..", "..", "docs", file);
        if (
            File.Exists(docs)
            && File.ReadAllText(docs)
                .ReplaceLineEndings("\n")
                .Contains(study, StringComparison.Ordinal)
        )
            return;
        var path = Path.Combine(AppContext.BaseDirectory, received);
        File.WriteAllText(path, study);
        Assert.Fail($"docs/{file} does not hold what the study gives; read {path}.");
    }
}
