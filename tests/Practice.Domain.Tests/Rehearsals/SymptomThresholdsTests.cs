using Practice.Domain.Practices;
using Practice.Domain.Rehearsals;

namespace Practice.Domain.Tests.Rehearsals;

/// <summary>A practice may draw its own lines, but never across what is not its own to decide.</summary>
public class SymptomThresholdsTests
{
    [Theory]
    [InlineData(1, 4, 1, TrialVerdict.Pass)]
    [InlineData(1, 4, 2, TrialVerdict.Adapt)]
    [InlineData(1, 4, 4, TrialVerdict.Fail)]
    [InlineData(4, 5, 4, TrialVerdict.Pass)]
    [InlineData(0, 1, 0, TrialVerdict.Pass)]
    [InlineData(0, 1, 1, TrialVerdict.Fail)]
    public void The_practices_own_lines_are_followed(
        int pass,
        int fail,
        int peak,
        TrialVerdict verdict
    ) =>
        Assert.Equal(
            verdict,
            TrialVerdicts.OfPeak(peak, new SymptomThresholds(pass, fail).Checked())
        );

    // Severe is 5 and more on the scale (Wilson 2017; anchors of the scale): no line may let it through.
    [Theory]
    [InlineData(2, 6)]
    [InlineData(5, 6)]
    [InlineData(2, 0)]
    [InlineData(3, 3)]
    [InlineData(4, 3)]
    [InlineData(-1, 3)]
    public void Lines_that_let_a_severe_score_through_or_cross_are_refused(int pass, int fail) =>
        Assert.Throws<ArgumentException>(() => new SymptomThresholds(pass, fail).Checked());

    [Fact]
    public void However_lines_are_drawn_severe_scores_vomiting_stops_and_warning_signs_fail()
    {
        var calm = new Feedback { ReceivedAt = default };
        for (var fail = 1; fail <= 5; fail++)
        for (var pass = 0; pass < fail; pass++)
        {
            var lines = new SymptomThresholds(pass, fail).Checked();
            Assert.All(
                [5, 6, 7, 8, 9, 10],
                peak => Assert.Equal(TrialVerdict.Fail, TrialVerdicts.OfPeak(peak, lines))
            );
            Feedback[] stops =
            [
                calm with
                {
                    Vomited = true,
                },
                calm with
                {
                    Run = new RunFeedback { StoppedByGut = true },
                },
                calm with
                {
                    WarningSigns = [WarningSign.Collapse],
                },
            ];
            Assert.All(
                stops,
                told => Assert.Equal(TrialVerdict.Fail, TrialVerdicts.Of(told, lines))
            );
        }
    }

    [Theory]
    [InlineData(2, 5, "pass to 2, adapt at 3 and 4, fail from 5")]
    [InlineData(2, 4, "pass to 2, adapt at 3, fail from 4")]
    [InlineData(4, 5, "pass to 4, fail from 5")]
    [InlineData(0, 5, "pass to 0, adapt at 1 to 4, fail from 5")]
    public void The_lines_read_as_people_say_them(int pass, int fail, string words) =>
        Assert.Equal(words, new SymptomThresholds(pass, fail).InWords());

    [Fact]
    public void The_basis_says_where_a_practice_drew_its_own_lines()
    {
        Assert.Null(SymptomThresholds.House.Basis.Note);
        Assert.Contains(
            "pass to 2, adapt at 3 and 4, fail from 5",
            new SymptomThresholds(1, 4).Basis.Note,
            StringComparison.Ordinal
        );
    }
}
