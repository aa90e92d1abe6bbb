using Practice.Domain.Evidence;
using Practice.Domain.Foods;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Screening.Rules;

/// <summary>
/// Coeliac disease: no wheat, barley, rye or ordinary oats, not even a little.
/// </summary>
internal sealed class CoeliacDiseaseExcludesGluten : ScreeningRule
{
    public override Source Source => Sources.DieteticPractice;

    public override bool When(ScreenedCase screened) =>
        screened.Answers.SaysYes(FoodAndTheBody.Coeliac);

    public override Findings Then(ScreenedCase screened) =>
        new()
        {
            Cautions =
            [
                TellClient(
                    "gluten-free",
                    "Eat only what is labelled gluten-free or free of it by nature, not even a little of "
                        + "anything else. Check what the course and your journey offer before you rely on it."
                ),
            ],
            Adjustments = new()
            {
                ExcludedAllergens = [Allergen.Wheat, Allergen.Barley, Allergen.Rye],
                ExcludedTraits = FoodTraits.UncertifiedOats,
            },
        };
}
