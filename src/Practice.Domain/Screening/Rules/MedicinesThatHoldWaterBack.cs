using Practice.Domain.Evidence;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Screening.Rules;

/// <summary>
/// Thiazides, SSRIs, desmopressin and carbamazepine favour low blood sodium: drink to thirst only.
/// </summary>
internal sealed class MedicinesThatHoldWaterBack : ScreeningRule
{
    public override Source Source => Sources.ClinicalKnowledge;

    public override bool When(ScreenedCase screened) =>
        screened.TakesAnyOf(
            Medicines.Thiazide,
            Medicines.Ssri,
            Medicines.Fluvoxamine,
            Medicines.Desmopressin,
            Medicines.Carbamazepine
        );

    public override Findings Then(ScreenedCase screened) =>
        new()
        {
            Cautions =
            [
                LowBloodSodium.DrinkToThirst,
                LowBloodSodium.Signs,
                TellPractitioner(
                    "medicine-sodium",
                    "A medicine that favours low blood sodium: advise drinking to thirst only, with no drinking plan."
                ),
            ],
            Adjustments = new() { ThirstOnly = true },
        };
}
