using Practice.Domain.Evidence;
using Practice.Domain.Foods;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Screening.Rules;

/// <summary>
/// Low FODMAP only for those with symptoms whom it has suited in rehearsal.
/// </summary>
internal sealed class LowFodmapAfterRehearsal : ScreeningRule
{
    public override Source Source => Sources.LowFodmap;

    public override bool When(ScreenedCase screened) =>
        screened.Answers.SaysYes(Gut.IrritableBowel)
        && screened.Answers.SaysYes(Gut.LowFodmapSuits);

    public override Findings Then(ScreenedCase screened) =>
        new()
        {
            Cautions =
            [
                TellPractitioner(
                    "low-fodmap",
                    "Foods rich in fermentable sugars are left out, as rehearsed: one to three days are enough."
                ),
            ],
            Adjustments = new() { ExcludedTraits = FoodTraits.HighFodmap },
        };
}
