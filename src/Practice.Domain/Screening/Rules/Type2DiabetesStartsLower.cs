using Practice.Domain.Evidence;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Screening.Rules;

/// <summary>
/// Type 2 diabetes: a full load may not suit; the practitioner starts lower and sets the rate.
/// </summary>
internal sealed class Type2DiabetesStartsLower : ScreeningRule
{
    public override Source Source => Sources.DieteticPractice;

    public override bool When(ScreenedCase screened) =>
        screened.Answers.Says(Diabetes.Kind, Diabetes.Type2);

    public override Findings Then(ScreenedCase screened) =>
        new()
        {
            Cautions =
            [
                TellPractitioner(
                    "diabetes-type-2",
                    "A full load may be unsuitable in type 2 diabetes: start at 5 to 7 g/kg a day, and "
                        + "settle the rate with the client."
                ),
            ],
            Adjustments = new() { CarbohydrateRateLow = 5, CarbohydrateRateHigh = 7 },
        };
}
