using Practice.Domain.Evidence;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Screening.Rules;

/// <summary>
/// Fructose malabsorption, a trouble of the gut and no danger: 15 to 20 g a sitting, of which the lower end is taken.
/// </summary>
internal sealed class FructoseMalabsorptionLimitsFructose : ScreeningRule
{
    public override Source Source => Sources.DieteticPractice;

    public override bool When(ScreenedCase screened) =>
        screened.Answers.Says(FoodAndTheBody.Fructose, FoodAndTheBody.FructoseMalabsorption);

    public override Findings Then(ScreenedCase screened) =>
        new()
        {
            Cautions =
            [
                TellClient(
                    "rehearse-fructose",
                    "Rehearse every sports drink and gel before the race: many bring fructose."
                ),
            ],
            Adjustments = new() { FructoseMaxPerOccasionG = 15 },
        };
}
