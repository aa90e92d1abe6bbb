using System.ComponentModel.DataAnnotations;
using Practice.Domain.Foods;
using Practice.Domain.Plans;
using Practice.Domain.Practices;
using Practice.Domain.Rehearsals;
using Practice.Store.Documents;
using Practice.Web.Features.Settings.Defaults;
using Practice.Web.Features.Settings.Texts;

namespace Practice.Web.Tests.Features;

public class DefaultsFormTests
{
    private static readonly PracticeDefaults Set = new()
    {
        CarbohydrateGPerKg = 9,
        DrinksShare = 0.3m,
        OccasionsPerDay = 5,
        Sittings = [.. DayShape.Of(5).Select(s => s with { Share = 0.2m })],
        Thresholds = new SymptomThresholds(1, 4),
        MealIdeas = ["Rice and beans", "Porridge"],
        ReminderDays = 0,
        Texts = new() { Thanks = "Thanks a lot." },
    };

    [Fact]
    public void What_is_on_file_comes_back_from_the_forms_unchanged()
    {
        Assert.Equal(Json(Set), Json(DefaultsForm.Open(Set).ApplyTo(Set).Checked()));
        Assert.Equal(Json(Set), Json(TextsForm.Open(Set).ApplyTo(Set).Checked()));
        var untouched = new PracticeDefaults { DrinksShare = 0.3m };
        Assert.Equal(
            Json(untouched),
            Json(
                TextsForm
                    .Open(untouched)
                    .ApplyTo(DefaultsForm.Open(untouched).ApplyTo(untouched))
                    .Checked()
            )
        );
    }

    [Fact]
    public void Each_form_changes_its_own_part_and_leaves_the_other()
    {
        var words = TextsForm.Open(Set);
        (words.Closing, words.MealIdeas) = ("Good legs!", " Toast \n\n Bagel ");
        var changed = words.ApplyTo(Set).Checked();
        Assert.Equal("Good legs!", changed.Texts.Closing);
        Assert.Equal(["Toast", "Bagel"], changed.MealIdeas);
        Assert.Equal((Set.Sittings, Set.Thresholds), (changed.Sittings, changed.Thresholds));

        var habits = DefaultsForm.Open(Set);
        habits.PassUpTo = 3;
        Assert.Equal(Set.Texts, habits.ApplyTo(Set).Texts);
    }

    [Fact]
    public void The_house_is_one_button_away()
    {
        var habits = DefaultsForm.Open(Set);
        habits.SpreadAsUsual();
        habits.JudgeAsUsual();
        var reset = habits.ApplyTo(Set).Checked();
        Assert.Empty(reset.Sittings);
        Assert.Equal(SymptomThresholds.House, reset.Thresholds);

        var words = TextsForm.Open(Set);
        words.WriteAsUsual();
        Assert.Equal("", words.ApplyTo(Set).Checked().Texts.Thanks);
    }

    [Fact]
    public void Other_occasions_bring_their_own_rows()
    {
        var habits = DefaultsForm.Open(Set);
        habits.OccasionsPerDay = 7;
        habits.SpreadAsUsual();
        Assert.Equal(7, habits.Sittings.Count);
        Assert.Empty(Problems(habits));
        habits.OccasionsPerDay = null;
        habits.SpreadAsUsual();
        Assert.Equal(7, habits.Sittings.Count);
    }

    [Fact]
    public void What_is_wrong_is_said_beside_the_field_it_stands_in()
    {
        var habits = DefaultsForm.Open(Set);
        (habits.PassUpTo, habits.FailFrom) = (4, 4);
        habits.Sittings[0].Percent = 30;
        Assert.Equal(
            [nameof(habits.PassUpTo), nameof(habits.Sittings)],
            Problems(habits).SelectMany(p => p.MemberNames)
        );
        Assert.Contains("110 %", habits.SpreadProblem, StringComparison.Ordinal);

        habits.Sittings[0].Percent = null;
        Assert.Equal("A share is needed.", habits.Sittings[0].Problem);
        habits.Sittings[1].Time = new TimeOnly(23, 0);
        Assert.Equal("Between 09:30 and 11:30.", habits.Sittings[1].Problem);
        Assert.Contains(Problems(habits), p => p.MemberNames.Contains(nameof(habits.Sittings)));

        habits = DefaultsForm.Open(Set);
        habits.FailFrom = 6;
        Assert.Contains(
            "severe",
            Assert.Single(Problems(habits)).ErrorMessage,
            StringComparison.Ordinal
        );

        var words = TextsForm.Open(Set);
        words.MealIdeas = $"Toast\n{new string('x', 201)}";
        Assert.Contains(
            "201",
            Assert.Single(Problems(words)).ErrorMessage,
            StringComparison.Ordinal
        );
        words.MealIdeas = string.Join('\n', Enumerable.Range(0, 41));
        Assert.Contains(
            "there are 41",
            Assert.Single(Problems(words)).ErrorMessage,
            StringComparison.Ordinal
        );
    }

    private static List<ValidationResult> Problems(object form)
    {
        var problems = new List<ValidationResult>();
        Validator.TryValidateObject(form, new ValidationContext(form), problems, true);
        return problems;
    }

    private static string Json(PracticeDefaults defaults) => StoredJson.Write(defaults);
}
