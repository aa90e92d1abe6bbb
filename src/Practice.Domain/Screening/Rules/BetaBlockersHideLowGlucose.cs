using Practice.Domain.Evidence;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Screening.Rules;

/// <summary>
/// Beta-blockers mask the signs of low glucose and blunt the heart rate.
/// </summary>
internal sealed class BetaBlockersHideLowGlucose : ScreeningRule
{
    public override Source Source => Sources.DieteticPractice;

    public override bool When(ScreenedCase screened) => screened.TakesAnyOf(Medicines.BetaBlocker);

    public override Findings Then(ScreenedCase screened) =>
        new()
        {
            Cautions =
            [
                TellClient(
                    "beta-blocker",
                    "Pace by effort: your medicine keeps your heart rate low."
                ),
                TellPractitioner(
                    "beta-blocker-glucose",
                    "Beta-blocker: signs of low blood glucose may be hidden."
                ),
            ],
        };
}
