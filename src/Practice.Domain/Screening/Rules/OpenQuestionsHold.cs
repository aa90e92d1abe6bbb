using Practice.Domain.Evidence;

namespace Practice.Domain.Screening.Rules;

/// <summary>
/// A question without an answer is not a "no": the plan waits for it.
/// </summary>
internal sealed class OpenQuestionsHold : ScreeningRule
{
    public override Source Source => Sources.DieteticPractice;

    public override bool When(ScreenedCase screened) =>
        !Questionnaire.Open(screened.Answers).IsEmpty;

    public override Findings Then(ScreenedCase screened)
    {
        var open = Questionnaire.Open(screened.Answers);
        var sections = Questionnaire
            .Sections.Where(section => section.Questions.Any(open.Contains))
            .Select(section => section.Title);
        return new()
        {
            Holds =
            [
                Hold(
                    ScreeningRules.IncompleteKey,
                    "Screening is not complete",
                    $"Some health questions have no answer yet: {string.Join(", ", sections)}. Ask the client."
                ) with
                {
                    LiftedBy = LiftedBy.Answers,
                },
            ],
        };
    }
}
