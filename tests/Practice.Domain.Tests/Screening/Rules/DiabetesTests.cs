using Practice.Domain.Screening;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Tests.Screening.Rules;

public class DiabetesTests
{
    // Riddell 2017 Lancet Diabetes Endocrinol 5:377; the hold itself is common practice
    [Fact]
    public void Type_1_diabetes_and_insulin_for_any_reason_need_the_diabetes_team()
    {
        foreach (
            var outcome in new[]
            {
                Screened.By(Diabetes.Kind, Diabetes.Type1),
                Screened.Taking(Medicines.Insulin),
                Screened.Outcome(
                    Questionnaire
                        .NothingToReport.With(Diabetes.Kind, Diabetes.Type2)
                        .With(Medicines.Taken, Medicines.Insulin)
                ),
            }
        )
        {
            var hold = Assert.Single(outcome.Holds);
            Assert.Equal("diabetes-insulin", hold.Key);
            Assert.Equal(LiftedBy.Professional, hold.LiftedBy);
            Assert.Equal("riddell-2017", hold.Source.Key);
            Assert.True(outcome.Caution("diabetes-glucose-checks").ForClient);
            // 1.5 mmol/L: from memory, and so for the practitioner alone
            Assert.False(outcome.Caution("diabetes-ketones").ForClient);
        }
    }

    // common practice
    [Fact]
    public void An_unknown_type_is_held_until_somebody_knows()
    {
        Assert.Equal(
            ["diabetes-unclear"],
            Screened.By(Diabetes.Kind, Diabetes.OtherOrUnsure).HoldKeys()
        );
    }

    // common practice
    [Fact]
    public void Medicines_that_release_insulin_need_the_prescriber()
    {
        var outcome = Screened.Taking(Medicines.SulfonylureaOrGlinide);

        Assert.Equal(["diabetes-insulin-releasers"], outcome.HoldKeys());
        Assert.True(outcome.Caution("diabetes-fast-sugar").ForClient);
    }

    // AACE/ACE statement: stop at least 24 h before a marathon
    [Fact]
    public void An_SGLT2_inhibitor_needs_the_prescribers_decision_with_or_without_diabetes()
    {
        var hold = Assert.Single(Screened.Taking(Medicines.Sglt2Inhibitor).Holds);

        Assert.Equal("sglt2-inhibitor", hold.Key);
        Assert.Contains("24 hours", hold.Reason, StringComparison.Ordinal);
    }

    // common practice: start at 5-7 g/kg
    [Fact]
    public void Type_2_diabetes_starts_at_five_to_seven_grams_a_kilogram_without_a_hold()
    {
        var outcome = Screened.By(Diabetes.Kind, Diabetes.Type2);

        Assert.Empty(outcome.Holds);
        Assert.Equal(["diabetes-type-2"], outcome.CautionKeys());
        Screened.Same(
            new() { CarbohydrateRateLow = 5, CarbohydrateRateHigh = 7 },
            outcome.Adjustments
        );
    }

    // from memory; how much smaller a meal is a rule of this tool
    [Fact]
    public void GLP_1_medicines_make_meals_smaller()
    {
        var outcome = Screened.Taking(Medicines.Glp1Agonist);

        Assert.Empty(outcome.Holds);
        Assert.Equal(["glp1-energy", "glp1-small-meals"], outcome.CautionKeys());
        Screened.Same(new() { OccasionWeightFactor = 0.75m }, outcome.Adjustments);
    }

    // common practice
    [Theory]
    [InlineData("prediabetes")]
    [InlineData("past-gestational")]
    public void Prediabetes_and_past_gestational_diabetes_warn_the_practitioner_and_change_nothing(
        string choice
    )
    {
        var outcome = Screened.By(
            Diabetes.Kind,
            Diabetes.Kind.Choices.Single(c => c.Key == choice)
        );

        Assert.Empty(outcome.Holds);
        Assert.False(outcome.Caution("prediabetes").ForClient);
        Screened.Same(Adjustments.None, outcome.Adjustments);
    }
}
