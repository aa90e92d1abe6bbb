using Practice.Domain.Evidence;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Screening.Rules;

/// <summary>
/// An allergy that is told but not listed would not be kept off the plate.
/// </summary>
internal sealed class AllergiesAreListed : ScreeningRule
{
    public override Source Source => Sources.DieteticPractice;

    public override bool When(ScreenedCase screened) =>
        screened.Answers.SaysYes(FoodAndTheBody.FoodAllergy)
        && screened.Client.Diet.Allergies.IsEmpty
        && string.IsNullOrWhiteSpace(screened.Client.Diet.OtherAllergy);

    public override Findings Then(ScreenedCase screened) =>
        new()
        {
            Holds =
            [
                Hold(
                    "allergies-not-listed",
                    "Allergy not listed",
                    "The client says that she has a food allergy, and her diet lists none. Record each one "
                        + "with her diet."
                ) with
                {
                    LiftedBy = LiftedBy.Answers,
                },
            ],
        };
}
