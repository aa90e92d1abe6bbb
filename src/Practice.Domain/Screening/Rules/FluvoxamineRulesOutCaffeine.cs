using Practice.Domain.Evidence;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Screening.Rules;

/// <summary>
/// Fluvoxamine stretches the half-life of caffeine about elevenfold.
/// </summary>
internal sealed class FluvoxamineRulesOutCaffeine : ScreeningRule
{
    public override Source Source => ScreeningSources.CulmMerdek2005;

    public override bool When(ScreenedCase screened) => screened.TakesAnyOf(Medicines.Fluvoxamine);

    public override Findings Then(ScreenedCase screened) => WithoutCaffeine.Findings;
}
