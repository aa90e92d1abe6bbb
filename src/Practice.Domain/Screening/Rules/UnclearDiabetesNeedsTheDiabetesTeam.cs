using Practice.Domain.Evidence;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Screening.Rules;

/// <summary>
/// Another or an unknown type of diabetes is held like the riskier ones until somebody knows.
/// </summary>
internal sealed class UnclearDiabetesNeedsTheDiabetesTeam : ScreeningRule
{
    public override Source Source => Sources.DieteticPractice;

    public override bool When(ScreenedCase screened) =>
        screened.Answers.Says(Diabetes.Kind, Diabetes.OtherOrUnsure);

    public override Findings Then(ScreenedCase screened) =>
        new()
        {
            Holds =
            [
                Hold(
                    "diabetes-unclear",
                    "Diabetes of another or unknown type",
                    "What loading does depends on the type and its treatment. Needed: the diabetes team's "
                        + "or the physician's word on both."
                ),
            ],
        };
}
