using Practice.Domain.Evidence;
using Practice.Domain.Foods;

namespace Practice.Domain.Screening.Rules;

/// <summary>
/// Under 18: ordinary food first and no reliance on products or supplements (published); a lower rate, no caffeine,
/// no numbers
/// and no weighing (common practice).
/// </summary>
internal sealed class Under18NeedsGuardianAndDietitian : ScreeningRule
{
    public override Source Source => Sources.Desbrow2014;

    public override bool When(ScreenedCase screened) => screened.Client.AgeOn(screened.Today) < 18;

    public override Findings Then(ScreenedCase screened) =>
        new()
        {
            Holds =
            [
                Hold(
                    "under-18",
                    "Under 18",
                    "Needed: a guardian's consent and a dietitian's sign-off, both named in the clearance."
                ) with
                {
                    Source = Sources.DieteticPractice,
                },
            ],
            Cautions =
            [
                WithoutCaffeine.Caution,
                TellClient(
                    "ordinary-food-first",
                    "Ordinary food does the work. You need no sports products, caffeine or supplements for this."
                ),
                TellPractitioner(
                    "under-18-growth",
                    "Formulas for adults' resting energy do not hold under 18. Growth or periods that slow "
                        + "down: refer."
                ) with
                {
                    Source = Sources.DieteticPractice,
                },
            ],
            Adjustments = WithoutCaffeine.Adjustments.And(
                new()
                {
                    CarbohydrateRateLow = 6,
                    CarbohydrateRateHigh = 8,
                    NumberFree = true,
                    NoWeighing = true,
                    ExcludedTraits = FoodTraits.SportsProduct,
                }
            ),
        };
}
