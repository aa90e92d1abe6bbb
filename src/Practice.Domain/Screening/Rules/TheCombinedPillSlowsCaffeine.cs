using Practice.Domain.Evidence;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Screening.Rules;

/// <summary>
/// Combined oral contraceptives about double the half-life of caffeine.
/// </summary>
internal sealed class TheCombinedPillSlowsCaffeine : ScreeningRule
{
    public override Source Source => Sources.ClinicalKnowledge;

    public override bool When(ScreenedCase screened) => screened.TakesAnyOf(Medicines.CombinedPill);

    public override Findings Then(ScreenedCase screened) =>
        new()
        {
            Cautions =
            [
                HalfTheCaffeine.Caution,
                TellPractitioner(
                    "caffeine-pill",
                    "The combined pill about doubles the half-life of caffeine: its limits are halved."
                ),
            ],
            Adjustments = HalfTheCaffeine.Adjustments,
        };
}
