using Practice.Domain.Evidence;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Screening.Rules;

/// <summary>
/// Levothyroxine, iron and tetracyclines are taken apart from food, coffee and calcium.
/// </summary>
internal sealed class MedicinesTakenAwayFromFood : ScreeningRule
{
    public override Source Source => Sources.ClinicalKnowledge;

    public override bool When(ScreenedCase screened) =>
        screened.TakesAnyOf(Medicines.Levothyroxine, Medicines.Iron, Medicines.Tetracycline);

    public override Findings Then(ScreenedCase screened) =>
        new()
        {
            Cautions =
            [
                TellClient(
                    "medicine-apart-from-food",
                    "You eat more often than usual while loading: still take your medicine apart from food, "
                        + "coffee and milk, as its leaflet says."
                ),
            ],
        };
}
