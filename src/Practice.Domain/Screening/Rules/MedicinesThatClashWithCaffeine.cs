using Practice.Domain.Evidence;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Screening.Rules;

/// <summary>
/// Theophylline, clozapine, MAO inhibitors and stimulants: effects add up, or levels change.
/// </summary>
internal sealed class MedicinesThatClashWithCaffeine : ScreeningRule
{
    public override Source Source => Sources.ClinicalKnowledge;

    public override bool When(ScreenedCase screened) =>
        screened.TakesAnyOf(
            Medicines.Theophylline,
            Medicines.Clozapine,
            Medicines.MaoInhibitor,
            Medicines.Stimulant
        );

    public override Findings Then(ScreenedCase screened) =>
        new()
        {
            Cautions =
            [
                WithoutCaffeine.Caution,
                TellPractitioner(
                    "caffeine-clash",
                    "A medicine whose effect or level changes with caffeine: plan none, and leave usual "
                        + "coffee or tea to the prescriber."
                ),
            ],
            Adjustments = WithoutCaffeine.Adjustments,
        };
}
