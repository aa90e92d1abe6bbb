using Practice.Domain.Evidence;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Screening.Rules;

/// <summary>
/// Heart failure, or a limit on drinking: the tool plans no fluid.
/// </summary>
internal sealed class FluidLimitsComeFromThePhysician : ScreeningRule
{
    public override Source Source => Sources.DieteticPractice;

    public override bool When(ScreenedCase screened) =>
        screened.Answers.SaysAnyOf(
            HeartAndKidneys.Heart,
            HeartAndKidneys.HeartFailure,
            HeartAndKidneys.FluidLimit
        );

    public override Findings Then(ScreenedCase screened) =>
        new()
        {
            Cautions =
            [
                TellClient(
                    "fluid-limit",
                    "Keep to the amount of drink that your doctor has set for you."
                ),
            ],
            Adjustments = new() { ThirstOnly = true },
        };
}
