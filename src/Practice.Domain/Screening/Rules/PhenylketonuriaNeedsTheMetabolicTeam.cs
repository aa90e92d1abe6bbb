using Practice.Domain.Evidence;
using Practice.Domain.Foods;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Screening.Rules;

/// <summary>
/// Phenylketonuria: protein comes from the metabolic team alone, and aspartame is out.
/// </summary>
internal sealed class PhenylketonuriaNeedsTheMetabolicTeam : ScreeningRule
{
    public override Source Source => Sources.DieteticPractice;

    public override bool When(ScreenedCase screened) =>
        screened.Answers.SaysYes(FoodAndTheBody.Phenylketonuria);

    public override Findings Then(ScreenedCase screened) =>
        new()
        {
            Holds =
            [
                Hold(
                    "phenylketonuria",
                    "Phenylketonuria",
                    "Protein has to follow the metabolic team's allowance; the usual lower limit must not "
                        + "be applied. Needed: the team's clearance, with its allowance for the loading days."
                ),
            ],
            Cautions =
            [
                TellClient(
                    "no-aspartame",
                    "Keep to the protein allowance of your metabolic team, and leave out everything "
                        + "sweetened with aspartame."
                ),
            ],
            Adjustments = new() { NoProteinFloor = true, ExcludedTraits = FoodTraits.Sweetener },
        };
}
