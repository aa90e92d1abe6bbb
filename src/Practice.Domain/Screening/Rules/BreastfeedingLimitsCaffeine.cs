using Practice.Domain.Evidence;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Screening.Rules;

/// <summary>
/// Breastfeeding: caffeine as in pregnancy, more protein, drink to thirst.
/// </summary>
internal sealed class BreastfeedingLimitsCaffeine : ScreeningRule
{
    public override Source Source => Sources.EfsaCaffeine2015;

    public override bool When(ScreenedCase screened) =>
        screened.Answers.Says(Pregnancy.Status, Pregnancy.Breastfeeding);

    public override Findings Then(ScreenedCase screened) =>
        new()
        {
            Cautions =
            [
                TellClient(
                    "breastfeeding",
                    "Drink to your thirst, which is greater while you breastfeed."
                ) with
                {
                    Source = Sources.DieteticPractice,
                },
                TellClient(
                    "breastfeeding-caffeine",
                    "Keep caffeine low: stay within the daily amount that your midwife or doctor allows."
                ),
                TellPractitioner(
                    "breastfeeding-protein",
                    "Breastfeeding raises the need of protein by 19 g a day in the first half year and by "
                        + "13 g after it."
                ) with
                {
                    Source = Sources.EfsaProtein2012,
                },
            ],
            Adjustments = new() { CaffeineMaxMgPerDay = 200 },
        };
}
