using Practice.Domain.Evidence;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Screening.Rules;

/// <summary>
/// Shifts of sodium, fluid or caffeine change the level of lithium.
/// </summary>
internal sealed class LithiumKeepsSaltAndCaffeineSteady : ScreeningRule
{
    public override Source Source => Sources.ClinicalKnowledge;

    public override bool When(ScreenedCase screened) => screened.TakesAnyOf(Medicines.Lithium);

    public override Findings Then(ScreenedCase screened) =>
        new()
        {
            Holds =
            [
                Hold(
                    "lithium",
                    "Lithium",
                    "Loading changes salt, drink and caffeine, and each of them can change the level of "
                        + "lithium. Needed: the prescriber's clearance, and whether the level is to be checked."
                ),
            ],
            Cautions =
            [
                TellClient(
                    "lithium",
                    "Keep your salt, your drinking and your coffee or tea as they usually are, and add none "
                        + "for the race."
                ),
            ],
            Adjustments = WithoutCaffeine.Adjustments.And(
                new() { NoAddedSodium = true, ThirstOnly = true }
            ),
        };
}
