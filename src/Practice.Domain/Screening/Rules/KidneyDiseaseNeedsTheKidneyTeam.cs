using Practice.Domain.Evidence;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Screening.Rules;

/// <summary>
/// Chronic kidney disease: potassium, phosphate, sodium, protein and fluid are all individual.
/// </summary>
internal sealed class KidneyDiseaseNeedsTheKidneyTeam : ScreeningRule
{
    public override Source Source => Sources.DieteticPractice;

    public override bool When(ScreenedCase screened) =>
        screened.Answers.SaysYes(HeartAndKidneys.Kidneys);

    public override Findings Then(ScreenedCase screened) =>
        new()
        {
            Holds =
            [
                Hold(
                    "kidney-disease",
                    "Kidney disease",
                    "Potassium, phosphate, sodium, protein and fluid all have to be set for this client. "
                        + "Needed: clearance from the kidney team, with those limits."
                ),
            ],
            Cautions =
            [
                TellClient(
                    "kidney-limits",
                    "Keep to the amounts of fluid, salt and potassium that your kidney team has set for you."
                ),
                TellPractitioner(
                    "kidney-potassium",
                    "Do not lean on juice and potatoes for the load: both are rich in potassium."
                ),
            ],
            Adjustments = new()
            {
                NoAddedSodium = true,
                ThirstOnly = true,
                NoProteinFloor = true,
            },
        };
}
