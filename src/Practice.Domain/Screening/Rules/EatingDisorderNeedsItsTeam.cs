using Practice.Domain.Evidence;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Screening.Rules;

/// <summary>
/// A present or suspected eating disorder comes before any plan.
/// </summary>
internal sealed class EatingDisorderNeedsItsTeam : ScreeningRule
{
    public override Source Source => Sources.DieteticPractice;

    public override bool When(ScreenedCase screened) =>
        screened.Answers.SaysAnyOf(
            EatingAndEnergy.EatingDisorder,
            EatingAndEnergy.AtPresent,
            EatingAndEnergy.Suspected
        );

    public override Findings Then(ScreenedCase screened) =>
        new()
        {
            Holds =
            [
                Hold(
                    "eating-disorder",
                    "Eating disorder, present or suspected",
                    "Planning food may do harm now. Needed: clearance from the eating-disorder team or, "
                        + "while only suspected, from the physician who has looked into it."
                ),
            ],
        };
}
