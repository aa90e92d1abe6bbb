using Practice.Domain.Evidence;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Screening.Rules;

/// <summary>
/// Inflammatory bowel disease, active or quiet.
/// </summary>
internal sealed class BowelInflammationAsksForCare : ScreeningRule
{
    public override Source Source => Sources.DieteticPractice;

    public override bool When(ScreenedCase screened) =>
        screened.Answers.SaysAnyOf(Gut.InflammatoryBowel, Gut.InRemission, Gut.Active);

    public override Findings Then(ScreenedCase screened) =>
        new()
        {
            Cautions =
            [
                TellPractitioner(
                    "ibd",
                    "Inflammatory bowel disease: ask which foods bring on trouble, and rehearse the plan in full."
                ),
            ],
        };
}
