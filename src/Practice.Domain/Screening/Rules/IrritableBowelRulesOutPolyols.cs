using Practice.Domain.Evidence;
using Practice.Domain.Foods;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Screening.Rules;

/// <summary>
/// Irritable bowel syndrome: no polyols, and no more than 30 g of fructose an hour in the race.
/// </summary>
internal sealed class IrritableBowelRulesOutPolyols : ScreeningRule
{
    public override Source Source => Sources.DieteticPractice;

    public override bool When(ScreenedCase screened) =>
        screened.Answers.SaysYes(Gut.IrritableBowel);

    public override Findings Then(ScreenedCase screened) =>
        new()
        {
            Cautions =
            [
                TellPractitioner(
                    "ibs",
                    "Irritable bowel: low FODMAP for the last one to three days only if it was rehearsed "
                        + "and suited the client; the decision is yours."
                ),
            ],
            Adjustments = new()
            {
                ExcludedTraits = FoodTraits.Sweetener,
                RaceFructoseMaxGPerHour = 30,
            },
        };
}
