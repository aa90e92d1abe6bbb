using System.Collections.Immutable;
using Practice.Domain.Quantities;

namespace Practice.Domain.Foods.Own;

/// <summary>
/// What is wrong, or odd, about a food that a practice writes down: the questions that the tests of the library ask of
/// its rows, put to her before anybody is served it.
/// </summary>
public static class FoodSheetChecks
{
    private const int LongestName = 100;
    private const int LongestSource = 500;
    private const string Needed = "This is needed.";

    /// <summary>All of it, field by field; empty when nothing is.</summary>
    public static ImmutableArray<FoodFault> Of(FoodSheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return
        [
            .. Names(sheet),
            .. FigureChecks.Of(sheet.Per100G),
            .. ServingChecks.Of(sheet),
            .. AllergenChecks.Of(sheet),
            .. Places(sheet),
        ];
    }

    private static IEnumerable<FoodFault> Names(FoodSheet sheet)
    {
        if (OwnFood.KeyOf(sheet.Name).Length == 0)
            yield return new(FoodField.Name, Needed);
        else if (TypedText.Problem(sheet.Name, LongestName) is { } problem)
            yield return new(FoodField.Name, problem);
        else if (
            FoodLibrary.Standard.All.FirstOrDefault(f =>
                OwnFood.KeyOf(f.Name) == OwnFood.KeyOf(sheet.Name)
            ) is
            { } twin
        )
            yield return new(
                FoodField.Name,
                $"The library has a {twin.Name} too: a name of its own tells them apart.",
                IsWarning: true
            );
        if (TypedText.Problem(sheet.UsName, LongestName) is { } american)
            yield return new(FoodField.UsName, american);
        if (TypedText.Problem(sheet.Source, LongestSource, ofLines: true) is { } source)
            yield return new(FoodField.Source, source);
        if (sheet.Source.Trim().Length == 0)
            yield return new(
                FoodField.Source,
                "Say where the figures come from: the label, a maker's sheet, a recipe.",
                IsWarning: true
            );
    }

    private static IEnumerable<FoodFault> Places(FoodSheet sheet)
    {
        if (sheet.Group is null)
            yield return new(FoodField.Group, "Choose the section of a shop.");
        var families = FoodFamilies.All;
        if (sheet.Family is { } family && !families.Contains(family))
            yield return new(FoodField.Family, "The library has no such kind.");
        else if (sheet.Family is null && sheet.Traits.HasFlag(FoodTraits.Substitute))
            yield return new(
                FoodField.Family,
                "Say what it stands in for: only then the planner knows who needs it."
            );
        if (sheet.Roles.IsEmpty)
            yield return new(
                FoodField.Roles,
                "Choose a part in a meal: without one it comes on no plate."
            );
        if (sheet.Occasions.IsEmpty)
            yield return new(FoodField.Occasions, "Choose a sitting that it suits.");
    }
}
