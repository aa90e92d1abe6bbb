using Practice.Domain.Evidence;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Screening.Rules;

/// <summary>
/// A big change in leafy vegetables, such as days low in fibre, shifts the effect of warfarin.
/// </summary>
internal sealed class WarfarinNeedsSteadyVegetables : ScreeningRule
{
    public override Source Source => Sources.ClinicalKnowledge;

    public override bool When(ScreenedCase screened) => screened.TakesAnyOf(Medicines.Warfarin);

    public override Findings Then(ScreenedCase screened) =>
        new()
        {
            Cautions =
            [
                TellClient(
                    "warfarin",
                    "Tell the clinic that checks your warfarin that you will eat few leafy vegetables for some days."
                ),
            ],
        };
}
