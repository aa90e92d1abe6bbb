using Practice.Domain.Evidence;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Screening.Rules;

/// <summary>
/// Arrhythmia, or high blood pressure that is not under control.
/// </summary>
internal sealed class CaffeineIsLeftOutForTheHeart : ScreeningRule
{
    public override Source Source => Sources.DieteticPractice;

    public override bool When(ScreenedCase screened) =>
        screened.Answers.Says(HeartAndKidneys.Heart, HeartAndKidneys.Arrhythmia)
        || screened.Answers.Says(
            HeartAndKidneys.BloodPressure,
            HeartAndKidneys.UncontrolledPressure
        );

    public override Findings Then(ScreenedCase screened) => WithoutCaffeine.Findings;
}
