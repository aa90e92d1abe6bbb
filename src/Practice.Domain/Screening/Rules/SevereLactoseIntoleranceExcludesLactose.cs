using Practice.Domain.Evidence;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Screening.Rules;

/// <summary>
/// Some react to less than 6 g: for them none at all.
/// </summary>
internal sealed class SevereLactoseIntoleranceExcludesLactose : ScreeningRule
{
    public override Source Source => Sources.EfsaLactose2010;

    public override bool When(ScreenedCase screened) =>
        screened.Answers.Says(FoodAndTheBody.Lactose, FoodAndTheBody.NoLactose);

    public override Findings Then(ScreenedCase screened) =>
        new()
        {
            Cautions =
            [
                TellPractitioner(
                    "lactose-none",
                    "Lactose is left out altogether: some react to less than 6 g."
                ),
            ],
            Adjustments = new() { LactoseMaxPerOccasionG = 0, LactoseMaxPerDayG = 0 },
        };
}
