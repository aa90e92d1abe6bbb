using NodaTime;
using Practice.Domain.Course;
using Practice.Domain.Rehearsals;
using static Practice.Domain.Rehearsals.TrialVerdict;

namespace Practice.Domain.Tests.Rehearsals;

public class RehearsedGutTests
{
    [Fact]
    public void Without_a_reviewed_rehearsal_nothing_is_known()
    {
        var told = Run(60, Pass, worst: 1);
        Assert.Equivalent(GutRecord.None, RehearsedGut.Of([]));
        Assert.Equivalent(GutRecord.None, RehearsedGut.Of([NotReviewed(60)]));
        Assert.NotEqual(GutRecord.None, RehearsedGut.Of([told]));
    }

    // own rule on the ladder of science.md 4.6: 10 g/h up after a clean trial, hold at 3 and 4, 15 g/h down from 5 on
    [Theory]
    [InlineData(Pass, 1, 60)]
    [InlineData(Adapt, 4, 50)]
    [InlineData(Fail, 7, 35)]
    public void The_rate_of_one_trial_and_ten_is_never_above_what_the_ladder_tries_next(
        TrialVerdict verdict,
        int worst,
        int tolerated
    )
    {
        var gut = RehearsedGut.Of([Run(60, verdict, worst)]);
        Assert.Equal(tolerated, gut.ToleratedGPerHour);
        Assert.Equal(RunFuelLadder.Next(60, verdict), gut.ToleratedGPerHour + 10);
    }

    [Fact]
    public void The_highest_rate_passed_counts_whatever_came_after_below_it() =>
        Assert.Equal(
            70,
            RehearsedGut.Of([Run(70, Pass, 0, day: 1), Run(50, Pass, 0, day: 8)]).ToleratedGPerHour
        );

    [Fact]
    public void A_later_trial_that_failed_takes_a_rate_back_and_one_passed_after_it_gives_one_again()
    {
        var (passed, failed) = (Run(70, Pass, 0, day: 1), Run(60, Fail, 6, day: 8));
        Assert.Equal(35, RehearsedGut.Of([passed, failed]).ToleratedGPerHour);
        // in whatever order they come
        Assert.Equal(35, RehearsedGut.Of([failed, passed]).ToleratedGPerHour);
        Assert.Equal(
            50,
            RehearsedGut.Of([passed, failed, Run(50, Pass, 1, day: 15)]).ToleratedGPerHour
        );
    }

    [Fact]
    public void Clean_trials_are_those_about_the_rate_without_a_score_above_two()
    {
        var gut = RehearsedGut.Of([
            Run(50, Pass, 0, day: 1),
            Run(56, Pass, 2, day: 8),
            Run(60, Pass, 3, day: 15),
            Run(58, Pass, null, day: 22),
        ]);
        Assert.Equal(60, gut.ToleratedGPerHour);
        Assert.Equal(2, gut.CleanTrials);
    }

    [Fact]
    public void A_trial_at_the_rate_that_did_not_sit_well_begins_the_count_anew_and_one_far_above_does_not()
    {
        var (one, two) = (Run(60, Pass, 0, day: 1), Run(60, Pass, 0, day: 15));
        Assert.Equal(2, RehearsedGut.Of([one, two]).CleanTrials);
        Assert.Equal(1, RehearsedGut.Of([one, Run(60, Fail, 6, day: 8), two]).CleanTrials);
        Assert.Equal(2, RehearsedGut.Of([one, two, Run(90, Fail, 6, day: 22)]).CleanTrials);
    }

    [Fact]
    public void Her_verdict_counts_not_the_tool_s() =>
        Assert.Equal(60, RehearsedGut.Of([Run(60, Pass, worst: 6)]).ToleratedGPerHour);

    [Fact]
    public void A_short_run_or_a_mistyped_amount_tells_nothing() =>
        Assert.Empty(RehearsedGut.Of([Run(60, Pass, 0, minutes: 40), Run(400, Pass, 0)]).Trials);

    [Fact]
    public void Every_trial_stands_in_the_basis_with_rate_verdict_and_score()
    {
        var trial = Assert.Single(RehearsedGut.Of([Run(62, Adapt, 4)]).Trials);
        Assert.Equal("28 Mar 2027", trial.Name);
        Assert.Equal("62 g/h, to adapt, worst gut score 4", trial.Value);
    }

    private static Rehearsal Run(
        decimal gPerHour,
        TrialVerdict verdict,
        int? worst,
        int day = 0,
        double minutes = 120
    )
    {
        var rehearsal = Told(gPerHour, worst, day, minutes);
        rehearsal.Review(new(verdict, "A. Person", default, ""));
        return rehearsal;
    }

    private static Rehearsal NotReviewed(decimal gPerHour) => Told(gPerHour, 0, 0, 120);

    private static Rehearsal Told(decimal gPerHour, int? worst, int day, double minutes)
    {
        var rehearsal = Rehearsal.Book(
            Guid.NewGuid(),
            Guid.NewGuid(),
            Guid.NewGuid(),
            Sample.Full with
            {
                RunOn = Sample.RunOn.PlusDays(day),
            },
            Sample.Plan()
        );
        rehearsal.Tell(
            new Feedback
            {
                ReceivedAt = default,
                Symptoms = worst is { } score
                    ? [new(SymptomItem.Nausea, SymptomMoment.During, score)]
                    : [],
                Run = new RunFeedback
                {
                    Time = Duration.FromMinutes(minutes),
                    CarbohydrateG = gPerHour * (decimal)minutes / 60,
                },
            }
        );
        return rehearsal;
    }
}
