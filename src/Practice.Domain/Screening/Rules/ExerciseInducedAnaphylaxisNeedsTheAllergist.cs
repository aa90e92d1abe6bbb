using Practice.Domain.Evidence;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Screening.Rules;

/// <summary>
/// Anaphylaxis on exercise after a food: the allergist decides on food before and during exercise.
/// </summary>
internal sealed class ExerciseInducedAnaphylaxisNeedsTheAllergist : ScreeningRule
{
    public override Source Source => Sources.DieteticPractice;

    public override bool When(ScreenedCase screened) =>
        screened.Answers.Says(FoodAndTheBody.Anaphylaxis, FoodAndTheBody.SevereReactionOnExercise);

    public override Findings Then(ScreenedCase screened) =>
        new()
        {
            Holds =
            [
                Hold(
                    "exercise-induced-anaphylaxis",
                    "Anaphylaxis on exercise",
                    "Eating before exercise may bring on a severe reaction. Needed: an allergist's word on "
                        + "which foods, and how long before exercise."
                ),
            ],
        };
}
