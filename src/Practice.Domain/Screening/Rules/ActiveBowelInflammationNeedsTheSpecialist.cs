using Practice.Domain.Evidence;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Screening.Rules;

/// <summary>
/// Inflammatory bowel disease while it is active.
/// </summary>
internal sealed class ActiveBowelInflammationNeedsTheSpecialist : ScreeningRule
{
    public override Source Source => Sources.DieteticPractice;

    public override bool When(ScreenedCase screened) =>
        screened.Answers.Says(Gut.InflammatoryBowel, Gut.Active);

    public override Findings Then(ScreenedCase screened) =>
        new()
        {
            Holds =
            [
                Hold(
                    "ibd-active",
                    "Active inflammatory bowel disease",
                    "Needed: the gastroenterologist's clearance for loading and for the race."
                ),
            ],
        };
}
