using Practice.Domain.Screening;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Tests.Screening.Rules;

public class HeartAndKidneysTests
{
    // common practice; the painkiller warning goes to everyone (Lipman 2017)
    [Fact]
    public void Kidney_disease_needs_the_kidney_team_and_leaves_salt_fluid_and_protein_to_it()
    {
        var outcome = Screened.ByYes(HeartAndKidneys.Kidneys);

        Assert.Equal(["kidney-disease"], outcome.HoldKeys());
        Assert.True(outcome.Caution("kidney-limits").ForClient);
        Assert.Contains(
            "potassium",
            outcome.Caution("kidney-potassium").Text,
            StringComparison.Ordinal
        );
        Screened.Same(
            new()
            {
                NoAddedSodium = true,
                ThirstOnly = true,
                NoProteinFloor = true,
            },
            outcome.Adjustments
        );
    }

    // common practice; WHO < 2 g and US < 2.3 g of sodium a day
    [Fact]
    public void Controlled_blood_pressure_switches_salt_off_and_leaves_caffeine_to_consent()
    {
        var outcome = Screened.By(
            HeartAndKidneys.BloodPressure,
            HeartAndKidneys.ControlledPressure
        );

        Assert.Empty(outcome.Holds);
        Assert.Equal(["blood-pressure", "no-added-salt"], outcome.CautionKeys());
        Screened.Same(new() { NoAddedSodium = true }, outcome.Adjustments);
    }

    // caffeine zero: uncontrolled hypertension, arrhythmia
    [Fact]
    public void Uncontrolled_blood_pressure_rules_caffeine_out_too()
    {
        var outcome = Screened.By(
            HeartAndKidneys.BloodPressure,
            HeartAndKidneys.UncontrolledPressure
        );

        Assert.Empty(outcome.Holds);
        Assert.Equal(["blood-pressure", "no-added-salt", "no-caffeine"], outcome.CautionKeys());
        Screened.Same(
            new()
            {
                NoAddedSodium = true,
                CaffeineMaxMgPerDay = 0,
                CaffeineMaxMgPerIntake = 0,
                NoRaceCaffeine = true,
            },
            outcome.Adjustments
        );
    }

    // common practice
    [Fact]
    public void Every_heart_condition_and_warning_sign_needs_a_physician_and_no_added_salt()
    {
        foreach (var choice in HeartAndKidneys.Heart.Choices.Remove(Choice.NoneOfThese))
        {
            var outcome = Screened.By(HeartAndKidneys.Heart, choice);
            Assert.Equal(["heart"], outcome.HoldKeys());
            Assert.True(outcome.Adjustments.NoAddedSodium, choice.Key);
        }
        Assert.Equal(9, HeartAndKidneys.Heart.Choices.Length);
    }

    [Fact]
    public void Heart_failure_and_a_fluid_limit_leave_drinking_to_the_physician()
    {
        foreach (var choice in new[] { HeartAndKidneys.HeartFailure, HeartAndKidneys.FluidLimit })
        {
            var outcome = Screened.By(HeartAndKidneys.Heart, choice);
            Assert.True(outcome.Adjustments.ThirstOnly, choice.Key);
            Assert.True(outcome.Caution("fluid-limit").ForClient);
        }
        Assert.False(
            Screened
                .By(HeartAndKidneys.Heart, HeartAndKidneys.Cardiomyopathy)
                .Adjustments.ThirstOnly
        );
    }

    [Fact]
    public void An_arrhythmia_rules_caffeine_out()
    {
        Assert.Equal(
            0,
            Screened
                .By(HeartAndKidneys.Heart, HeartAndKidneys.Arrhythmia)
                .Adjustments.CaffeineMaxMgPerDay
        );
        Assert.Null(
            Screened
                .By(HeartAndKidneys.Heart, HeartAndKidneys.ChestPain)
                .Adjustments.CaffeineMaxMgPerDay
        );
    }
}
