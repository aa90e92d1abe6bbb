using Practice.Domain.Screening;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Tests.Screening;

public class QuestionnaireTests
{
    [Fact]
    public void Keys_are_unique_and_lower_case()
    {
        var keys = Questionnaire.All.Select(question => question.Key).ToList();
        Assert.Equal(keys.Count, keys.Distinct().Count());
        foreach (var question in Questionnaire.All)
        {
            var choices = question.Choices.Select(choice => choice.Key).ToList();
            Assert.Equal(choices.Count, choices.Distinct().Count());
            Assert.All(
                choices.Append(question.Key),
                key => Assert.Matches("^[a-z][a-z0-9]*(-[a-z0-9]+)*$", key)
            );
        }
    }

    [Fact]
    public void A_follow_up_stands_right_of_what_leads_to_it_in_its_section()
    {
        var followUps = 0;
        foreach (var section in Questionnaire.Sections)
        foreach (var question in section.Questions.Where(question => question.After is not null))
        {
            followUps++;
            var parent = section.Questions.IndexOf(question.After!.Question);
            Assert.InRange(parent, 0, section.Questions.IndexOf(question) - 1);
            Assert.Subset(
                question.After.Question.Choices.ToHashSet(),
                question.After.Choices.ToHashSet()
            );
        }
        Assert.Equal(2, followUps);
    }

    [Fact]
    public void A_follow_up_is_asked_only_after_the_answer_that_leads_to_it()
    {
        var answers = Questionnaire.NothingToReport;

        Assert.False(Questionnaire.Asks(Gut.LowFodmapSuits, answers));
        Assert.True(Questionnaire.Asks(Gut.LowFodmapSuits, answers.WithYes(Gut.IrritableBowel)));
        Assert.Equal([Gut.LowFodmapSuits], Questionnaire.Open(answers.WithYes(Gut.IrritableBowel)));
    }

    [Fact]
    public void Words_are_never_required()
    {
        Assert.DoesNotContain(Medicines.Others, Questionnaire.Open(ScreeningAnswers.None));
    }

    [Fact]
    public void An_open_question_is_not_a_no()
    {
        var open = ScreeningAnswers.None;
        var no = open.With(Gut.Stoma, Choice.No);

        Assert.False(open.Has(Gut.Stoma));
        Assert.True(no.Has(Gut.Stoma));
        Assert.False(open.SaysYes(Gut.Stoma));
        Assert.False(no.SaysYes(Gut.Stoma));
        Assert.NotEqual(open, no);
    }

    [Fact]
    public void Only_an_answer_to_the_question_is_taken()
    {
        var answers = ScreeningAnswers.None;

        Assert.Throws<ArgumentException>(() => answers.With(Gut.Stoma, Diabetes.Type1));
        Assert.Throws<ArgumentException>(() => answers.With(Gut.Stoma));
        Assert.Throws<ArgumentException>(() => answers.With(Gut.Stoma, Choice.Yes, Choice.No));
        Assert.Throws<ArgumentException>(() =>
            answers.With(Medicines.Taken, Choice.NoneOfThese, Medicines.Iron)
        );
        Assert.Throws<ArgumentException>(() => answers.WithWords(Gut.Stoma, "sometimes"));
    }

    [Fact]
    public void Ticking_a_medicine_puts_none_of_these_out_and_the_other_way_round()
    {
        var answers = ScreeningAnswers
            .None.Toggle(Medicines.Taken, Choice.NoneOfThese)
            .Toggle(Medicines.Taken, Medicines.Iron)
            .Toggle(Medicines.Taken, Medicines.Lithium);
        Assert.Equal(
            new HashSet<Choice> { Medicines.Iron, Medicines.Lithium },
            answers.Chosen(Medicines.Taken).ToHashSet()
        );

        answers = answers.Toggle(Medicines.Taken, Choice.NoneOfThese);
        Assert.Equal([Choice.NoneOfThese], answers.Chosen(Medicines.Taken));

        answers = answers.Toggle(Medicines.Taken, Choice.NoneOfThese);
        Assert.False(answers.Has(Medicines.Taken));
    }

    [Fact]
    public void Ticking_one_answer_of_several_that_exclude_each_other_replaces_the_other()
    {
        var answers = ScreeningAnswers
            .None.Toggle(Gut.Stoma, Choice.No)
            .Toggle(Gut.Stoma, Choice.Yes);

        Assert.Equal([Choice.Yes], answers.Chosen(Gut.Stoma));
    }

    [Fact]
    public void Stored_answers_that_the_questionnaire_no_longer_knows_leave_the_question_open()
    {
        var stored = Questionnaire.NothingToReport with
        {
            Given = Questionnaire
                .NothingToReport.Given.SetItem("stoma", ["perhaps"])
                .Add("a-question-of-old", ["yes"]),
        };

        Assert.Equal([Gut.Stoma], Questionnaire.Open(stored));
    }

    [Fact]
    public void No_question_shows_a_number_with_a_unit()
    {
        Assert.All(
            Questionnaire.All.SelectMany(q =>
                q.Choices.Select(choice => choice.Text).Append(q.Text).Append(q.Help)
            ),
            text => Assert.Empty(NumberFree.Violations(text))
        );
    }
}
