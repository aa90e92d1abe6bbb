using Practice.Domain.Evidence;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Screening.Rules;

/// <summary>
/// Sulfonylureas and glinides can bring blood glucose too low in exercise.
/// </summary>
internal sealed class InsulinReleasersNeedThePrescriber : ScreeningRule
{
    public override Source Source => Sources.DieteticPractice;

    public override bool When(ScreenedCase screened) =>
        screened.TakesAnyOf(Medicines.SulfonylureaOrGlinide);

    public override Findings Then(ScreenedCase screened) =>
        new()
        {
            Holds =
            [
                Hold(
                    "diabetes-insulin-releasers",
                    "Diabetes with a sulfonylurea or glinide",
                    "Blood glucose can fall too low in exercise. Needed: the prescriber's clearance, with "
                        + "carbohydrate and doses planned together."
                ),
            ],
            Cautions =
            [
                TellClient(
                    "diabetes-fast-sugar",
                    "Carry fast sugar with you, and know the signs of low blood glucose."
                ),
            ],
        };
}
