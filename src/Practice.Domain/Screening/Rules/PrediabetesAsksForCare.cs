using Practice.Domain.Evidence;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Screening.Rules;

/// <summary>
/// Prediabetes, or diabetes in a past pregnancy.
/// </summary>
internal sealed class PrediabetesAsksForCare : ScreeningRule
{
    public override Source Source => Sources.DieteticPractice;

    public override bool When(ScreenedCase screened) =>
        screened.Answers.SaysAnyOf(Diabetes.Kind, Diabetes.Prediabetes, Diabetes.PastGestational);

    public override Findings Then(ScreenedCase screened) =>
        new()
        {
            Cautions =
            [
                TellPractitioner(
                    "prediabetes",
                    "Raised risk of diabetes: ask when blood glucose was last checked, and keep the load to "
                        + "the days that need it."
                ),
            ],
        };
}
