using Practice.Domain.Evidence;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Screening.Rules;

/// <summary>
/// Panic disorder, a doctor's advice or the client's own choice.
/// </summary>
internal sealed class CaffeineIsLeftOutOnRequest : ScreeningRule
{
    public override Source Source => Sources.DieteticPractice;

    public override bool When(ScreenedCase screened) =>
        screened.Answers.SaysAnyOf(
            Caffeine.Avoided,
            Caffeine.PanicDisorder,
            Caffeine.DoctorsAdvice,
            Caffeine.OwnChoice
        );

    public override Findings Then(ScreenedCase screened) => WithoutCaffeine.Findings;
}
