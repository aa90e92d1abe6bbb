using Practice.Domain.Evidence;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Screening.Rules;

/// <summary>
/// Opioids, anticholinergics and antihistamines slow the gut and impair sweating.
/// </summary>
internal sealed class MedicinesThatSlowGutAndSweat : ScreeningRule
{
    public override Source Source => Sources.DieteticPractice;

    public override bool When(ScreenedCase screened) =>
        screened.TakesAnyOf(Medicines.Opioid, Medicines.Anticholinergic, Medicines.Antihistamine);

    public override Findings Then(ScreenedCase screened) =>
        new()
        {
            Cautions =
            [
                TellClient(
                    "medicine-gut-and-sweat",
                    "One of your medicines can slow the gut and make you sweat less: rehearse the plan, and "
                        + "take it easier when it is hot."
                ),
            ],
        };
}
