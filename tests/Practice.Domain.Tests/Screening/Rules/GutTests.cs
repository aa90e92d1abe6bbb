using Practice.Domain.Foods;
using Practice.Domain.Screening;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Tests.Screening.Rules;

public class GutTests
{
    // common practice: polyols 0, fructose <= 30 g/h in the race
    [Fact]
    public void Irritable_bowel_rules_out_polyols_and_limits_fructose_in_the_race()
    {
        var outcome = Screened.Outcome(
            Questionnaire
                .NothingToReport.WithYes(Gut.IrritableBowel)
                .With(Gut.LowFodmapSuits, Choice.No)
        );

        Assert.Empty(outcome.Holds);
        Screened.Same(
            new() { ExcludedTraits = FoodTraits.Sweetener, RaceFructoseMaxGPerHour = 30 },
            outcome.Adjustments
        );
    }

    // Lis 2018, Wiffin 2019: fewer symptoms; Gaskell 2020: more injury marker, hence only with history and rehearsal
    [Fact]
    public void Low_FODMAP_follows_only_where_it_was_rehearsed_and_suited()
    {
        var outcome = Screened.Outcome(
            Questionnaire.NothingToReport.WithYes(Gut.IrritableBowel).WithYes(Gut.LowFodmapSuits)
        );

        Assert.Equal(
            FoodTraits.Sweetener | FoodTraits.HighFodmap,
            outcome.Adjustments.ExcludedTraits
        );
    }

    [Fact]
    public void A_left_over_low_FODMAP_answer_means_nothing_without_irritable_bowel()
    {
        var outcome = Screened.Outcome(Questionnaire.NothingToReport.WithYes(Gut.LowFodmapSuits));

        Screened.Same(Adjustments.None, outcome.Adjustments);
        Assert.Empty(outcome.CautionKeys());
    }

    // common practice
    [Fact]
    public void Bowel_inflammation_warns_while_quiet_and_holds_while_active()
    {
        var quiet = Screened.By(Gut.InflammatoryBowel, Gut.InRemission);
        var active = Screened.By(Gut.InflammatoryBowel, Gut.Active);

        Assert.Empty(quiet.Holds);
        Assert.Equal(["ibd"], quiet.CautionKeys());
        Assert.Equal(["ibd-active"], active.HoldKeys());
        Assert.Equal(["ibd"], active.CautionKeys());
    }

    // common practice
    [Fact]
    public void A_stoma_needs_the_specialist()
    {
        Assert.Equal(["stoma"], Screened.ByYes(Gut.Stoma).HoldKeys());
    }

    // early dumping within 1 h, late low glucose at 1-3 h; the factor is a rule of this tool
    [Fact]
    public void Stomach_surgery_needs_the_surgical_dietitian_and_halves_the_meals()
    {
        var outcome = Screened.ByYes(Gut.StomachSurgery);

        Assert.Equal(["stomach-surgery"], outcome.HoldKeys());
        Assert.Equal(["stomach-surgery", "stomach-surgery-meals"], outcome.CautionKeys());
        Screened.Same(new() { OccasionWeightFactor = 0.5m }, outcome.Adjustments);
    }

    // common practice
    [Fact]
    public void Every_gut_warning_sign_is_sent_to_a_doctor()
    {
        foreach (var sign in Gut.WarningSigns.Choices.Remove(Choice.NoneOfThese))
        {
            var outcome = Screened.By(Gut.WarningSigns, sign);
            Assert.Empty(outcome.Holds);
            Assert.True(outcome.Caution("gut-see-doctor").ForClient);
        }
        Assert.Equal(5, Gut.WarningSigns.Choices.Length);
    }
}
