using Practice.Domain.Evidence;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Screening.Rules;

/// <summary>
/// Who has had anaphylaxis carries her auto-injector, and the race's medical team knows.
/// </summary>
internal sealed class AnaphylaxisCallsForAnAutoInjector : ScreeningRule
{
    public override Source Source => Sources.DieteticPractice;

    public override bool When(ScreenedCase screened) =>
        screened.Answers.SaysAnyOf(
            FoodAndTheBody.Anaphylaxis,
            FoodAndTheBody.SevereReaction,
            FoodAndTheBody.SevereReactionOnExercise
        );

    public override Findings Then(ScreenedCase screened) =>
        new()
        {
            Cautions =
            [
                TellClient(
                    "anaphylaxis",
                    "Carry your adrenaline auto-injector in training and in the race, and tell the race's "
                        + "medical team about your allergy."
                ),
            ],
        };
}
