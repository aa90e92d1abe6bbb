using Practice.Domain.Evidence;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Screening.Rules;

/// <summary>
/// Blood, loss of weight, symptoms at night or fever are no matter of food.
/// </summary>
internal sealed class GutWarningSignsBelongBeforeADoctor : ScreeningRule
{
    public override Source Source => Sources.DieteticPractice;

    public override bool When(ScreenedCase screened) => screened.Answers.Reports(Gut.WarningSigns);

    public override Findings Then(ScreenedCase screened) =>
        new()
        {
            Cautions =
            [
                TellClient(
                    "gut-see-doctor",
                    "Please see your doctor soon about the gut symptoms you told us of."
                ),
                TellPractitioner(
                    "gut-warning-signs",
                    "Gut warning signs reported: refer to a doctor before changing food."
                ),
            ],
        };
}
