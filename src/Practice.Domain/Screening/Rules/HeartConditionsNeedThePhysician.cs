using Practice.Domain.Evidence;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Screening.Rules;

/// <summary>
/// Heart disease, or fainting and chest pain that nobody has explained.
/// </summary>
internal sealed class HeartConditionsNeedThePhysician : ScreeningRule
{
    public override Source Source => Sources.DieteticPractice;

    public override bool When(ScreenedCase screened) =>
        screened.Answers.Reports(HeartAndKidneys.Heart);

    public override Findings Then(ScreenedCase screened) =>
        new()
        {
            Holds =
            [
                Hold(
                    "heart",
                    "Heart condition or warning sign",
                    "Needed: a physician's clearance for the race, and her limits on salt and fluid."
                ),
            ],
            Adjustments = new() { NoAddedSodium = true },
        };
}
