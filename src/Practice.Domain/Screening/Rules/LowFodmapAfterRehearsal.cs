using Practice.Domain.Evidence;
using Practice.Domain.Foods;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Screening.Rules;

/// <summary>
/// Low FODMAP only for those with symptoms whom it has suited in rehearsal.
/// </summary>
internal sealed class LowFodmapAfterRehearsal : ScreeningRule
{
    public override Source Source => ScreeningSources.LowFodmap;

    public override bool When(ScreenedCase screened) =>
        screened.Answers.SaysYes(Gut.IrritableBowel)
        && screened.Answers.SaysYes(Gut.LowFodmapSuits);

    public override Findings Then(ScreenedCase screened) =>
        new() { Adjustments = new() { ExcludedTraits = FoodTraits.HighFodmap } };
}
