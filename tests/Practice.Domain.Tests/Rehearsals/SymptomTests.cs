using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Rehearsals;

namespace Practice.Domain.Tests.Rehearsals;

public class SymptomTests
{
    // I01, I03: anchors of the scale of Gaskell 2019 (IJSNEM 29:411-419), from memory.
    // I02: 5 and more is severe, Wilson 2017, read in the abstract.
    [Theory]
    [InlineData(0, Severity.None)]
    [InlineData(4, Severity.Mild)]
    [InlineData(5, Severity.Severe)]
    [InlineData(9, Severity.Severe)]
    [InlineData(10, Severity.Extreme)]
    public void A_score_has_a_severity(int score, Severity severity) =>
        Assert.Equal(severity, Symptom.SeverityOf(score));

    [Theory]
    [InlineData(-1)]
    [InlineData(11)]
    public void A_score_lies_between_0_and_10(int score) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => End(SymptomItem.Nausea, score));

    // I04: the sum rule; upper 2,1,0,0,0, lower 3,0,0,0,0, other 1,0,0 come to 7.
    [Fact]
    public void The_total_sums_upper_lower_and_other()
    {
        var scores = SymptomScores.Of([
            End(SymptomItem.Belching, 2),
            End(SymptomItem.Heartburn, 1),
            End(SymptomItem.Flatulence, 3),
            End(SymptomItem.Nausea, 1),
        ]);

        Assert.Equal(new SymptomScores(0, 3, 3, 1), scores);
        Assert.Equal(7, scores.Total);
    }

    [Fact]
    public void Gut_discomfort_as_a_whole_stays_out_of_the_total()
    {
        var scores = SymptomScores.Of([End(SymptomItem.GutDiscomfort, 6)]);

        Assert.Equal(6, scores.Overall);
        Assert.Equal(0, scores.Total);
    }

    [Fact]
    public void Each_item_belongs_to_its_category()
    {
        var items = Enum.GetValues<SymptomItem>().ToLookup(item => item.Category());

        Assert.Equal([1, 6, 5, 3], Enum.GetValues<SymptomCategory>().Select(c => items[c].Count()));
        Assert.Equal(15, Enum.GetValues<SymptomItem>().Select(i => i.InWords()).Distinct().Count());
    }

    [Fact]
    public void Severe_means_that_one_item_at_one_time_reached_five()
    {
        ImmutableArray<Symptom> spread =
        [
            End(SymptomItem.Belching, 4),
            End(SymptomItem.Nausea, 4),
            End(SymptomItem.LowerPain, 4),
        ];

        Assert.False(SymptomSummary.Of(spread).IsSevere);
        Assert.True(
            SymptomSummary
                .Of(spread.Add(new(SymptomItem.Stitch, SymptomMoment.DayAfter, 5)))
                .IsSevere
        );
        Assert.False(SymptomSummary.Of([]).HasAny);
    }

    // Trapezoids by hand: (0+4)/2 x 60 + (4+2)/2 x 60 = 300 over 120 min.
    [Fact]
    public void The_mean_over_the_run_is_the_area_over_its_duration()
    {
        var summary = SymptomSummary.Of(
            [
                new(SymptomItem.Nausea, SymptomMoment.Before, 0),
                new(SymptomItem.Nausea, SymptomMoment.During, 4, 60),
                End(SymptomItem.Nausea, 2),
                new(SymptomItem.Nausea, SymptomMoment.DayAfter, 9),
            ],
            Duration.FromHours(2)
        );

        Assert.Equal(2.5, summary.MeanTotalDuringRun!.Value, 12);
        Assert.Equal(9, summary.Peak);
    }

    [Fact]
    public void One_point_makes_no_area() =>
        Assert.Null(SymptomSummary.Of([End(SymptomItem.Nausea, 2)]).MeanTotalDuringRun);

    [Fact]
    public void Trouble_of_the_lower_gut_alone_is_told_apart()
    {
        ImmutableArray<Symptom> lower = [End(SymptomItem.AbnormalStool, 7)];

        Assert.True(SymptomSummary.Of(lower).OnlyLowerReaches(5));
        Assert.False(SymptomSummary.Of(lower.Add(End(SymptomItem.Nausea, 6))).OnlyLowerReaches(5));
    }

    private static Symptom End(SymptomItem item, int score) => new(item, SymptomMoment.End, score);
}
