using Practice.Domain.Evidence;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Screening.Rules;

/// <summary>
/// REDs, orange or red light: no restriction of energy and no weighing.
/// </summary>
internal sealed class OrangeLightFeedsTheBodyFirst : ScreeningRule
{
    public override Source Source => Sources.Reds2023;

    public override bool When(ScreenedCase screened) =>
        screened.Answers.SaysAnyOf(
            EatingAndEnergy.RedsColour,
            EatingAndEnergy.Orange,
            EatingAndEnergy.Red
        );

    public override Findings Then(ScreenedCase screened) =>
        new()
        {
            Cautions =
            [
                TellPractitioner(
                    "reds-orange",
                    "The clinician gave an orange or red light: restrict no energy before, during or after "
                        + "loading, keep energy availability up, and do not weigh."
                ),
            ],
            Adjustments = new() { NoWeighing = true },
        };
}
