using System.Collections.Immutable;
using Practice.Domain.Rehearsals;

namespace Practice.Domain.Tests.Rehearsals;

public class DoseResponseTests
{
    [Fact]
    public void Five_trials_are_too_few() =>
        Assert.Null(DoseResponse.Of(Enumerable.Repeat(Trials.Of("A", bad: true), 5)));

    [Fact]
    public void Risk_rises_with_the_dose_of_what_troubles_and_stays_finite_when_all_is_separated()
    {
        var fit = DoseResponse.Of([
            Trials.Of("A", bad: true),
            Trials.Of("A", bad: true),
            Trials.Of("AB", bad: true),
            Trials.Of("B", bad: false),
            Trials.Of("B", bad: false),
            Trials.Of("", bad: false),
        ])!;

        Assert.Equal(["A"], fit.Slopes[0].Foods);
        Assert.InRange(fit.Slopes[0].Slope, 1, 5);
        Assert.True(fit.Slopes[1].Slope < 0);
        Assert.True(fit.RiskAt(fit.Slopes[0], 0) < fit.RiskAt(fit.Slopes[0], 0.5));
        Assert.True(fit.RiskAt(fit.Slopes[0], 0.5) < fit.RiskAt(fit.Slopes[0], 1));
        Assert.All(fit.Slopes, s => Assert.InRange(s.StandardError, 0.5, 1.5));
        Assert.Null(fit.StrainSlope);
    }

    [Fact]
    public void Strain_stands_beside_the_foods()
    {
        var hot = new TrialStrains { Hot = true };
        var trials = Enumerable
            .Range(0, 8)
            .Select(i =>
                Trials.Of(i < 4 ? "A" : "", bad: i % 2 == 0) with
                {
                    Strains = i % 2 == 0 ? hot : TrialStrains.None,
                }
            )
            .ToList();

        var fit = DoseResponse.Of(trials)!;

        Assert.True(fit.StrainSlope > 1);
        Assert.InRange(fit.Slopes[0].Slope, -0.5, 0.5);
        Assert.False(fit.Slopes[0].IsClear);
    }

    [Fact]
    public void Foods_never_separated_share_a_slope()
    {
        var fit = DoseResponse.Of(
            Enumerable.Range(0, 6).Select(i => Trials.Of(i < 3 ? "AB" : "C", bad: i < 3))
        )!;

        Assert.Equal(
            [
                ["A", "B"],
                ["C"],
            ],
            fit.Slopes.Select(s => s.Foods.ToArray())
        );
    }

    // Own rule: 10 g/h up after a clean session, held at 3 and 4, 15 g/h down from 5 on.
    [Theory]
    [InlineData(60, TrialVerdict.Pass, 70)]
    [InlineData(85, TrialVerdict.Pass, 90)]
    [InlineData(100, TrialVerdict.Pass, 100)]
    [InlineData(60, TrialVerdict.Adapt, 60)]
    [InlineData(60, TrialVerdict.Fail, 45)]
    [InlineData(10, TrialVerdict.Fail, 0)]
    public void The_rate_on_the_run_climbs_a_ladder(int rate, TrialVerdict verdict, int next) =>
        Assert.Equal(next, RunFuelLadder.Next(rate, verdict));
}
