using Practice.Domain.Evidence;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Screening.Rules;

/// <summary>
/// REDs, red light as given by the clinician: no race plan.
/// </summary>
internal sealed class RedLightHolds : ScreeningRule
{
    public override Source Source => Sources.Reds2023;

    public override bool When(ScreenedCase screened) =>
        screened.Answers.Says(EatingAndEnergy.RedsColour, EatingAndEnergy.Red);

    public override Findings Then(ScreenedCase screened) =>
        new()
        {
            Holds =
            [
                Hold(
                    "reds-red",
                    "REDs: red light",
                    "The clinician gave a red light. Needed: clearance from the clinician who treats the client."
                ),
            ],
        };
}
