using Practice.Domain.Evidence;
using Practice.Domain.Foods;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Screening.Rules;

/// <summary>
/// Oats stay off unless certified ones are known to be tolerated.
/// </summary>
internal sealed class CoeliacDiseaseExcludesOats : ScreeningRule
{
    public override Source Source => Sources.DieteticPractice;

    public override bool When(ScreenedCase screened) =>
        screened.Answers.SaysYes(FoodAndTheBody.Coeliac)
        && !screened.Answers.SaysYes(FoodAndTheBody.CertifiedOats);

    public override Findings Then(ScreenedCase screened) =>
        new()
        {
            Cautions =
            [
                TellPractitioner(
                    "oats",
                    "Oats are left out: certified ones may come back once they are known to be tolerated."
                ),
            ],
            Adjustments = new() { ExcludedAllergens = [Allergen.Oats] },
        };
}
