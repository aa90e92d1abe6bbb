using Practice.Domain.Evidence;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Screening.Rules;

/// <summary>
/// Ciprofloxacin and cimetidine slow the breakdown of caffeine.
/// </summary>
internal sealed class MedicinesThatSlowCaffeine : ScreeningRule
{
    public override Source Source => Sources.CaffeineInteractions;

    public override bool When(ScreenedCase screened) =>
        screened.TakesAnyOf(Medicines.Ciprofloxacin, Medicines.Cimetidine);

    public override Findings Then(ScreenedCase screened) =>
        new()
        {
            Cautions =
            [
                HalfTheCaffeine.Caution,
                TellPractitioner(
                    "caffeine-cleared-slowly",
                    "Ciprofloxacin and cimetidine slow the clearance of caffeine: its limits are halved."
                ),
            ],
            Adjustments = HalfTheCaffeine.Adjustments,
        };
}
