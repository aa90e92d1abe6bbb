using Practice.Domain.Evidence;
using Practice.Domain.Foods;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Screening.Rules;

/// <summary>
/// Hereditary fructose intolerance: fructose, sucrose and sorbitol can bring low glucose and harm liver and kidneys.
/// After
/// clearance glucose, maltodextrin and starch only, and no more than 60 g/h in the race.
/// </summary>
internal sealed class HereditaryFructoseIntoleranceNeedsTheMetabolicTeam : ScreeningRule
{
    public override Source Source => Sources.FructoseIntolerance;

    public override bool When(ScreenedCase screened) =>
        screened.Answers.Says(
            FoodAndTheBody.Fructose,
            FoodAndTheBody.HereditaryFructoseIntolerance
        );

    public override Findings Then(ScreenedCase screened) =>
        new()
        {
            Holds =
            [
                Hold(
                    "hereditary-fructose-intolerance",
                    "Hereditary fructose intolerance",
                    "Fructose, sucrose and sorbitol are dangerous to this client. Needed: clearance from "
                        + "the metabolic team, with the foods and sports products it allows."
                ),
            ],
            Cautions =
            [
                TellClient(
                    "no-fructose",
                    "Eat and drink nothing with fructose, table sugar, invert sugar, honey, fruit or "
                        + "sorbitol. Read every label, and take nothing from the course that you have not "
                        + "checked."
                ),
            ],
            Adjustments = new()
            {
                NoFructoseAtAll = true,
                NoSucroseAtAll = true,
                FructoseMaxPerOccasionG = 0,
                RaceFructoseMaxGPerHour = 0,
                RaceCarbohydrateMaxGPerHour = 60,
                ExcludedTraits = FoodTraits.Sweetener,
            },
        };
}
