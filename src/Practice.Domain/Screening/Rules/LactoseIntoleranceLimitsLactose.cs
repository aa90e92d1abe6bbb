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
    public override Source Source => ScreeningSources.EfsaLactose;

    public override bool When(ScreenedCase screened) =>
        screened.Answers.SaysAnyOf(
            FoodAndTheBody.Lactose,
            FoodAndTheBody.SomeLactose,
            FoodAndTheBody.NoLactose
        );

    public override Findings Then(ScreenedCase screened) =>
        new()
        {
            Adjustments = new() { LactoseMaxPerOccasionG = 12, LactoseMaxPerDayG = 24 },
        };
}
