using Practice.Domain.Evidence;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Screening.Rules;

/// <summary>
/// Diuretics, ACE inhibitors, sartans and potassium-sparing tablets: sodium, potassium and heat.
/// </summary>
internal sealed class DiureticsShiftSodiumAndPotassium : ScreeningRule
{
    public override Source Source => Sources.DieteticPractice;

    public override bool When(ScreenedCase screened) =>
        screened.TakesAnyOf(Medicines.DiureticOrPressureTablet, Medicines.Thiazide);

    public override Findings Then(ScreenedCase screened) =>
        new()
        {
            Cautions =
            [
                TellClient(
                    "medicine-heat",
                    "One of your medicines makes heat harder to bear: take it easier when it is hot."
                ),
                TellPractitioner(
                    "diuretic-potassium",
                    "Water or blood-pressure tablets shift sodium and potassium: avoid a load that leans on "
                        + "juice, potatoes and bananas, and ask the prescriber about heat."
                ),
            ],
        };
}
