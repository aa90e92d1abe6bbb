using Practice.Domain.Evidence;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Screening.Rules;

/// <summary>
/// Ciprofloxacin, cimetidine and the combined pill slow the breakdown of caffeine: half of the general limits of
/// 400 mg a day and 200 mg at once. The pill's part is from memory.
/// </summary>
internal sealed class MedicinesThatSlowCaffeine : ScreeningRule
{
    public override Source Source => ScreeningSources.CaffeineInteractions;

    public override bool When(ScreenedCase screened) =>
        screened.TakesAnyOf(Medicines.Ciprofloxacin, Medicines.Cimetidine, Medicines.CombinedPill);

    public override Findings Then(ScreenedCase screened) =>
        new()
        {
            Cautions =
            [
                TellClient(
                    "caffeine-halved",
                    "One of your medicines makes caffeine last longer: take no more than half of what you "
                        + "otherwise would."
                ),
            ],
            Adjustments = new() { CaffeineMaxMgPerDay = 200, CaffeineMaxMgPerIntake = 100 },
        };
}
