using Practice.Domain.Evidence;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Screening.Rules;

/// <summary>
/// Type 1 diabetes, or any insulin: loading and feeding in the race change how much insulin is needed.
/// </summary>
internal sealed class InsulinNeedsTheDiabetesTeam : ScreeningRule
{
    public override Source Source => Sources.Riddell2017;

    public override bool When(ScreenedCase screened) =>
        screened.Answers.Says(Diabetes.Kind, Diabetes.Type1)
        || screened.TakesAnyOf(Medicines.Insulin);

    public override Findings Then(ScreenedCase screened) =>
        new()
        {
            Holds =
            [
                Hold(
                    "diabetes-insulin",
                    "Diabetes with insulin",
                    "Loading and feeding in the race change how much insulin is needed. Needed: clearance "
                        + "from the diabetes team, with an insulin plan for the loading days and the race."
                ),
            ],
            Cautions =
            [
                TellClient(
                    "diabetes-glucose-checks",
                    "Check your blood glucose before, during and after the race as your diabetes team has "
                        + "told you, and carry fast sugar with you."
                ),
                TellPractitioner(
                    "diabetes-ketones",
                    "No exercise with blood ketones of 1.5 mmol/L or more; the diabetes team's own limit comes first."
                ) with
                {
                    Source = Sources.ClinicalKnowledge,
                },
            ],
        };
}
