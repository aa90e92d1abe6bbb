using Practice.Domain.Evidence;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Screening.Rules;

/// <summary>
/// Most who digest lactose poorly bear 12 g at once and 24 g spread over a day. For the last day the plan's layout
/// goes
/// down to 6 g a sitting.
/// </summary>
internal sealed class LactoseIntoleranceLimitsLactose : ScreeningRule
{
    public override Source Source => Sources.EfsaLactose2010;

    public override bool When(ScreenedCase screened) =>
        screened.Answers.SaysAnyOf(
            FoodAndTheBody.Lactose,
            FoodAndTheBody.SomeLactose,
            FoodAndTheBody.NoLactose
        );

    public override Findings Then(ScreenedCase screened) =>
        new()
        {
            Cautions =
            [
                TellPractitioner(
                    "lactose",
                    "Lactose is kept to 12 g at once and 24 g a day, and to less on the last day. Most who "
                        + "digest it poorly bear that much; some do not."
                ),
            ],
            Adjustments = new() { LactoseMaxPerOccasionG = 12, LactoseMaxPerDayG = 24 },
        };
}
