using Practice.Domain.Evidence;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Screening.Rules;

/// <summary>
/// Past, present or suspected: no numbers and no weighing, whatever the client says she can handle.
/// </summary>
internal sealed class EatingDisorderHistoryMeansNoNumbers : ScreeningRule
{
    public override Source Source => Sources.DieteticPractice;

    public override bool When(ScreenedCase screened) =>
        screened.Answers.SaysAnyOf(
            EatingAndEnergy.EatingDisorder,
            EatingAndEnergy.InThePast,
            EatingAndEnergy.AtPresent,
            EatingAndEnergy.Suspected
        );

    public override Findings Then(ScreenedCase screened) =>
        new()
        {
            Cautions =
            [
                TellPractitioner(
                    "number-free",
                    "Papers and phone show this client no numbers. Do not weigh her and do not score what "
                        + "she ate; judge drinking by thirst and urine colour. Speak of low-fibre food as comfort "
                        + "for the gut, never as weight, and of no food as good or bad."
                ),
            ],
            Adjustments = new() { NumberFree = true, NoWeighing = true },
        };
}
