using Practice.Domain.Evidence;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Screening.Rules;

/// <summary>
/// After a bypass, a sleeve or a gastrectomy quickly absorbed carbohydrate brings early dumping and late low glucose:
/// the usual
/// load and gels are contraindicated.
/// </summary>
internal sealed class StomachSurgeryNeedsTheSurgicalDietitian : ScreeningRule
{
    public override Source Source => Sources.Dumping;

    public override bool When(ScreenedCase screened) =>
        screened.Answers.SaysYes(Gut.StomachSurgery);

    public override Findings Then(ScreenedCase screened) =>
        new()
        {
            Holds =
            [
                Hold(
                    "stomach-surgery",
                    "Stomach surgery",
                    "The usual load and gels are contraindicated: quickly absorbed carbohydrate brings "
                        + "dumping within the hour and low glucose one to three hours later. Needed: clearance "
                        + "from the surgical dietitian."
                ),
            ],
            Cautions =
            [
                TellClient(
                    "stomach-surgery",
                    "Eat small meals often, and drink between them rather than with them. Take gels only if "
                        + "your surgical dietitian has agreed."
                ),
                TellPractitioner(
                    "stomach-surgery-meals",
                    "Five or six small meals; fluids 30 min apart from food."
                ),
            ],
            // how much smaller is a rule of this tool: no published figure
            Adjustments = new() { OccasionWeightFactor = 0.5m },
        };
}
