using Practice.Domain.Evidence;
using Practice.Domain.Foods;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Screening.Rules;

/// <summary>
/// Pregnancy: no loading and no race plan without the obstetrician; foods safe for pregnancy; little caffeine.
/// </summary>
internal sealed class PregnancyNeedsTheObstetrician : ScreeningRule
{
    public override Source Source => Sources.EfsaCaffeine2015;

    public override bool When(ScreenedCase screened) =>
        screened.Answers.Says(Pregnancy.Status, Pregnancy.Pregnant);

    public override Findings Then(ScreenedCase screened) =>
        new()
        {
            Holds =
            [
                Hold(
                    "pregnancy",
                    "Pregnancy",
                    "Needed: the obstetrician's or midwife's clearance for loading and for the race."
                ) with
                {
                    Source = Sources.DieteticPractice,
                },
            ],
            Cautions =
            [
                TellClient(
                    "pregnancy-food-safety",
                    "Eat nothing raw from animals: no raw fish, no undercooked meat or egg, no "
                        + "unpasteurised milk or cheese."
                ) with
                {
                    Source = Sources.DieteticPractice,
                },
                TellClient(
                    "pregnancy-caffeine",
                    "Use no caffeine for the race, and stay within the daily amount that your midwife or "
                        + "doctor allows."
                ),
                TellPractitioner(
                    "pregnancy-weight",
                    "Set no goals of body mass, and no low-residue days."
                ) with
                {
                    Source = Sources.DieteticPractice,
                },
            ],
            Adjustments = new()
            {
                CaffeineMaxMgPerDay = 200,
                NoRaceCaffeine = true,
                NoLowResidue = true,
                NoWeighing = true,
                ExcludedTraits = FoodTraits.RawAnimal,
            },
        };
}
