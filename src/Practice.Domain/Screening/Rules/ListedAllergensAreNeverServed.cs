using Practice.Domain.Evidence;

namespace Practice.Domain.Screening.Rules;

/// <summary>
/// Allergens are matched on what a food holds, never on its name, and are never traded away.
/// </summary>
internal sealed class ListedAllergensAreNeverServed : ScreeningRule
{
    public override Source Source => Sources.AllergenGroups;

    public override bool When(ScreenedCase screened) => !screened.Client.Diet.Allergies.IsEmpty;

    public override Findings Then(ScreenedCase screened) =>
        new()
        {
            Cautions =
            [
                TellClient(
                    "allergens-labels",
                    "Read the label of every food, also of those you know: recipes change. Treat \"may "
                        + "contain\" as \"contains\"."
                ),
            ],
            Adjustments = new() { ExcludedAllergens = [.. screened.Client.Diet.Allergies] },
        };
}
