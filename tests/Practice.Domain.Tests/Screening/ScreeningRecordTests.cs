using System.Text.Json;
using NodaTime;
using Practice.Domain.Clients;
using Practice.Domain.Screening;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Tests.Screening;

public class ScreeningRecordTests
{
    private static readonly LocalDate Today = Screened.Today;

    [Fact]
    public void A_screening_counts_for_six_months_and_not_a_day_longer()
    {
        var record = Take(Questionnaire.NothingToReport, on: new LocalDate(2026, 3, 1));

        Assert.Empty(Standing(record, new LocalDate(2026, 9, 1)));
        Assert.Equal(["screening-expired"], Standing(record, new LocalDate(2026, 9, 2)));
    }

    [Fact]
    public void Going_through_the_questions_again_renews_a_screening_and_correcting_one_answer_does_not()
    {
        var record = Take(Questionnaire.NothingToReport, on: new LocalDate(2026, 1, 1));

        record.Correct(
            record.Answers.WithYes(Gut.IrritableBowel).With(Gut.LowFodmapSuits, Choice.No)
        );
        Assert.Equal(["screening-expired"], Standing(record, Today));

        record.Answer(record.Answers, Today);
        Assert.Empty(Standing(record, Today));
    }

    [Fact]
    public void A_professionals_clearance_lifts_its_hold_and_no_other()
    {
        var record = Take(
            Questionnaire.NothingToReport.WithYes(HeartAndKidneys.Kidneys).WithYes(Gut.Stoma)
        );
        record.Clear(Clearance("kidney-disease"));

        Assert.Equal(["stoma"], Standing(record, Today));
        Assert.Equal(
            ["kidney-disease", "stoma"],
            record.Outcome(Screened.Adult(), Today).HoldKeys()
        );
    }

    [Fact]
    public void A_clearance_counts_from_its_date_to_its_last_day()
    {
        var record = Take(Questionnaire.NothingToReport.WithYes(Gut.Stoma), on: Today);
        record.Clear(
            Clearance("stoma") with
            {
                On = new LocalDate(2026, 9, 10),
                ExpiresOn = new LocalDate(2026, 9, 20),
            }
        );

        Assert.Equal(["stoma"], Standing(record, new LocalDate(2026, 9, 9)));
        Assert.Empty(Standing(record, new LocalDate(2026, 9, 10)));
        Assert.Empty(Standing(record, new LocalDate(2026, 9, 20)));
        Assert.Equal(["stoma"], Standing(record, new LocalDate(2026, 9, 21)));
    }

    [Theory]
    [InlineData("")]
    [InlineData("  ")]
    public void A_clearance_that_names_no_profession_does_not_lift_a_professionals_hold(
        string profession
    )
    {
        var record = Take(Questionnaire.NothingToReport.WithYes(Gut.Stoma));
        record.Clear(Clearance("stoma") with { Profession = profession });

        Assert.Equal(["stoma"], Standing(record, Today));
    }

    [Theory]
    [InlineData("screening-incomplete")]
    [InlineData("screening-expired")]
    public void Missing_and_old_answers_are_never_cleared_only_given(string key)
    {
        var record = Take(
            Questionnaire.NothingToReport.Without(Diabetes.Kind),
            on: new LocalDate(2026, 1, 1)
        );
        record.Clear(Clearance(key));

        Assert.Contains(key, Standing(record, Today));
    }

    [Fact]
    public void The_practitioners_own_word_is_enough_for_an_allergen_outside_the_list()
    {
        var record = Take(Questionnaire.NothingToReport);
        var client = Screened.Adult(diet: new Diet { OtherAllergy = "Corn" });
        record.Clear(Clearance("unlisted-allergen:corn") with { Profession = "" });

        Assert.Empty(record.StandingHolds(client, Today));
    }

    [Fact]
    public void A_word_on_one_unlisted_allergen_does_not_lift_the_hold_on_another()
    {
        var record = Take(Questionnaire.NothingToReport);
        record.Clear(Clearance("unlisted-allergen:corn") with { Profession = "" });

        var changed = Screened.Adult(diet: new Diet { OtherAllergy = "Corn, alpha-gal" });
        Assert.Single(record.StandingHolds(changed, Today));
    }

    [Fact]
    public void A_clearance_says_who_gave_it_what_was_said_and_until_when()
    {
        var record = Take(Questionnaire.NothingToReport);
        var good = Clearance("stoma");

        Assert.Throws<ArgumentException>(() => record.Clear(good with { By = " " }));
        Assert.Throws<ArgumentException>(() => record.Clear(good with { WhatWasSaid = "" }));
        Assert.Throws<ArgumentException>(() =>
            record.Clear(good with { ExpiresOn = good.On.PlusDays(-1) })
        );
        Assert.Empty(record.Clearances);
    }

    [Fact]
    public void Answers_survive_json_with_what_is_open_still_open()
    {
        var answers = Questionnaire
            .NothingToReport.Without(Gut.Stoma)
            .With(Medicines.Taken, Medicines.Lithium, Medicines.Ssri)
            .WithWords(Medicines.Others, "Glucosamine, 2 tablets");

        var read = JsonSerializer.Deserialize<ScreeningAnswers>(JsonSerializer.Serialize(answers));

        Assert.Equal(answers, read);
        Assert.False(read!.Has(Gut.Stoma));
        Assert.True(read.Says(Medicines.Taken, Medicines.Lithium));
        Assert.Equal("Glucosamine, 2 tablets", read.WordsOn(Medicines.Others));
    }

    private static ScreeningRecord Take(ScreeningAnswers answers, LocalDate? on = null) =>
        ScreeningRecord.Take(Guid.NewGuid(), Guid.NewGuid(), answers, on ?? Today);

    private static string[] Standing(ScreeningRecord record, LocalDate day) =>
        [.. record.StandingHolds(Screened.Adult(), day).Select(hold => hold.Key)];

    private static Clearance Clearance(string hold) =>
        new(hold, "A. Reed", "physician", Today.PlusDays(-30), Today.PlusDays(300), "Fit to race.");
}
