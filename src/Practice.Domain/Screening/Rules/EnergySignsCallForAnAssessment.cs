using Practice.Domain.Evidence;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Screening.Rules;

/// <summary>
/// A primary indicator of REDs, or a yellow light, is passed on to a clinician; the tool works out no colour.
/// </summary>
internal sealed class EnergySignsCallForAnAssessment : ScreeningRule
{
    public override Source Source => Sources.Reds2023;

    public override bool When(ScreenedCase screened) =>
        screened.Answers.Reports(EatingAndEnergy.EnergySigns)
        || screened.Answers.SaysAnyOf(
            EatingAndEnergy.RedsColour,
            EatingAndEnergy.Yellow,
            EatingAndEnergy.Orange,
            EatingAndEnergy.Red
        );

    public override Findings Then(ScreenedCase screened) =>
        new()
        {
            Cautions =
            [
                TellClient(
                    "energy-check",
                    "Please ask your doctor to check whether you get enough energy for the training you do."
                ),
                TellPractitioner(
                    "reds-referral",
                    "Signs of low energy availability: refer to a clinician for a REDs assessment, and "
                        + "record the colour she gives."
                ),
            ],
        };
}
