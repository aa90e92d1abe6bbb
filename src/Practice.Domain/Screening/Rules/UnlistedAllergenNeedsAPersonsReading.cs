using Practice.Domain.Evidence;

namespace Practice.Domain.Screening.Rules;

/// <summary>
/// An allergen outside the fourteen groups cannot be checked by the tool: no automatic plan until the practitioner has
/// recorded how it was handled. The allergen is part of the key: a word on one does not lift the hold on another.
/// </summary>
internal sealed class UnlistedAllergenNeedsAPersonsReading : ScreeningRule
{
    public override Source Source => Sources.AllergenGroups;

    public override bool When(ScreenedCase screened) =>
        !string.IsNullOrWhiteSpace(screened.Client.Diet.OtherAllergy);

    public override Findings Then(ScreenedCase screened) =>
        new()
        {
            Holds =
            [
                Hold(
                    "unlisted-allergen:"
                        + screened.Client.Diet.OtherAllergy!.Trim().ToLowerInvariant(),
                    "Allergy outside the list",
                    $"\"{screened.Client.Diet.OtherAllergy.Trim()}\" is not among the allergens that foods "
                        + "are marked with. Check every food of the plan yourself, and record how it was handled."
                ) with
                {
                    LiftedBy = LiftedBy.Practitioner,
                    ForbidsDrafting = true,
                },
            ],
            Cautions =
            [
                TellClient(
                    "unlisted-allergen",
                    "One of your allergies is not among those that this plan can check by itself: read "
                        + "every label for it."
                ),
            ],
        };
}
