using Practice.Domain.Evidence;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Screening.Rules;

/// <summary>
/// High blood pressure: no added salt, and caffeine only with consent.
/// </summary>
internal sealed class HighBloodPressureSwitchesSaltOff : ScreeningRule
{
    public override Source Source => Sources.SodiumGuidance;

    public override bool When(ScreenedCase screened) =>
        screened.Answers.SaysAnyOf(
            HeartAndKidneys.BloodPressure,
            HeartAndKidneys.ControlledPressure,
            HeartAndKidneys.UncontrolledPressure
        );

    public override Findings Then(ScreenedCase screened) =>
        new()
        {
            Cautions =
            [
                TellClient(
                    "no-added-salt",
                    "Add no extra salt and take no salt tablets, on loading days or in the race."
                ),
                TellPractitioner(
                    "blood-pressure",
                    "High blood pressure: general advice is to stay below 2 g (WHO) or 2.3 g (US) of sodium "
                        + "a day. Plan caffeine only if the client and her doctor agree to it."
                ),
            ],
            Adjustments = new() { NoAddedSodium = true },
        };
}
