using Practice.Domain.Evidence;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Screening.Rules;

/// <summary>
/// Fluvoxamine stretches the half-life of caffeine about elevenfold.
/// </summary>
internal sealed class FluvoxamineRulesOutCaffeine : ScreeningRule
{
    public override Source Source => Sources.CulmMerdek2005;

    public override bool When(ScreenedCase screened) => screened.TakesAnyOf(Medicines.Fluvoxamine);

    public override Findings Then(ScreenedCase screened) =>
        new()
        {
            Cautions =
            [
                WithoutCaffeine.Caution,
                TellPractitioner(
                    "caffeine-fluvoxamine",
                    "Fluvoxamine stretches the half-life of caffeine from 5 h to more than two days: plan none."
                ),
            ],
            Adjustments = WithoutCaffeine.Adjustments,
        };
}
