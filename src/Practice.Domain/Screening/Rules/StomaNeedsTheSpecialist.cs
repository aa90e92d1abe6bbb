using Practice.Domain.Evidence;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Screening.Rules;

/// <summary>
/// A stoma loses water and sodium in its own way.
/// </summary>
internal sealed class StomaNeedsTheSpecialist : ScreeningRule
{
    public override Source Source => Sources.DieteticPractice;

    public override bool When(ScreenedCase screened) => screened.Answers.SaysYes(Gut.Stoma);

    public override Findings Then(ScreenedCase screened) =>
        new()
        {
            Holds =
            [
                Hold(
                    "stoma",
                    "Stoma",
                    "Fluid and sodium have to be set for this client. Needed: clearance from the specialist "
                        + "or stoma team, with both."
                ),
            ],
        };
}
