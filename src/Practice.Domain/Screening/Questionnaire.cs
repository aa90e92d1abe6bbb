using System.Collections.Immutable;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Screening;

/// <summary>
/// The health questions, in the order in which they are asked. Screening asks, it does not diagnose; the date of
/// birth, body mass and allergies come from the client's record and are not asked again.
/// </summary>
public static class Questionnaire
{
    /// <summary>The sections in order.</summary>
    public static ImmutableArray<QuestionSection> Sections { get; } =
    [
        Diabetes.Section,
        HeartAndKidneys.Section,
        EatingAndEnergy.Section,
        Gut.Section,
        FoodAndTheBody.Section,
        Pregnancy.Section,
        Medicines.Section,
        Caffeine.Section,
    ];

    /// <summary>All questions, asked or not.</summary>
    public static IEnumerable<Question> All => Sections.SelectMany(section => section.Questions);

    /// <summary>
    /// A complete screening of a client who has nothing to tell: the first choice of every question that is asked.
    /// </summary>
    public static ScreeningAnswers NothingToReport { get; } =
        All.Where(question => question is { After: null, IsOptional: false })
            .Aggregate(
                ScreeningAnswers.None,
                (answers, question) => answers.With(question, question.Choices[0])
            );

    /// <summary>Whether a question is asked, given what was answered so far.</summary>
    public static bool Asks(Question question, ScreeningAnswers answers)
    {
        ArgumentNullException.ThrowIfNull(question);
        ArgumentNullException.ThrowIfNull(answers);
        return question.After is not { } after
            || (Asks(after.Question, answers) && answers.SaysAnyOf(after.Question, after.Choices));
    }

    /// <summary>Questions that are asked, must be answered and are not. Empty for a complete screening.</summary>
    public static ImmutableArray<Question> Open(ScreeningAnswers answers) =>
        [.. All.Where(q => !q.IsOptional && Asks(q, answers) && !answers.Has(q))];
}
