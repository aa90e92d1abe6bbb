using Practice.Domain.Evidence;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Screening.Rules;

/// <summary>
/// Sucrase-isomaltase deficiency: no sucrose; fructose is allowed.
/// </summary>
internal sealed class SucraseDeficiencyNeedsTheMetabolicTeam : ScreeningRule
{
    public override Source Source => Sources.DieteticPractice;

    public override bool When(ScreenedCase screened) =>
        screened.Answers.SaysYes(FoodAndTheBody.SucraseDeficiency);

    public override Findings Then(ScreenedCase screened) =>
        new()
        {
            Holds =
            [
                Hold(
                    "sucrase-isomaltase-deficiency",
                    "Sucrase-isomaltase deficiency",
                    "Table sugar is not digested. Needed: the metabolic team's or the specialist's word on "
                        + "which carbohydrates suit."
                ),
            ],
            Cautions =
            [
                TellClient(
                    "no-sucrose",
                    "Eat and drink nothing with table sugar (sucrose). Read every label, and take nothing "
                        + "from the course that you have not checked."
                ),
                TellPractitioner(
                    "sucrase-starch",
                    "Starch and maltodextrin may be digested poorly too: how much differs from person to person."
                ) with
                {
                    Source = Sources.ClinicalKnowledge,
                },
            ],
            Adjustments = new() { NoSucroseAtAll = true },
        };
}
