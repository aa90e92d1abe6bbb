using Practice.Domain.Quantities;

namespace Practice.Domain.Foods.Own;

/// <summary>Whether a food is served in helpings that a person would put on a plate.</summary>
internal static class ServingChecks
{
    // as the tests of the library: more of one food is no helping
    private const decimal MostPieces = 12;
    private const decimal HeaviestG = 620;
    private const decimal MostCarbohydrateG = 190;
    private const int LongestUnit = 40;
    private const int MostMeasures = 12;

    public static IEnumerable<FoodFault> Of(FoodSheet sheet)
    {
        var serving = sheet.Serving;
        if (serving.Style is null)
            return [new(FoodField.Style, "Choose how it is measured out.")];
        return
        [
            .. serving.Style == ServingStyle.Counted ? Pieces(serving) : [],
            .. serving.Style == ServingStyle.Poured ? Density(serving) : [],
            .. Helpings(sheet),
            .. Roles(sheet),
            .. Measures(serving),
        ];
    }

    private static IEnumerable<FoodFault> Pieces(ServingSheet serving)
    {
        foreach (
            var (field, word) in new[]
            {
                (FoodField.Unit, serving.Unit),
                (FoodField.UnitPlural, serving.UnitPlural),
            }
        )
            if (string.IsNullOrWhiteSpace(word))
                yield return new(field, "A counted food needs a word, such as slice.");
            else if (word.Trim() is "g" or "ml")
                yield return new(field, "In grams it is weighed, in millilitres poured.");
            else if (TypedText.Problem(word, LongestUnit) is { } problem)
                yield return new(field, problem);
        if (TypedText.Problem(serving.UsUnit, LongestUnit) is { } us)
            yield return new(FoodField.UsUnit, us);
        if (TypedText.Problem(serving.UsUnitPlural, LongestUnit) is { } usPlural)
            yield return new(FoodField.UsUnitPlural, usPlural);
        if (serving.UsUnit is null != serving.UsUnitPlural is null)
            yield return new(
                FoodField.UsUnitPlural,
                "American words go in pairs: one and several."
            );
        if (serving.Grams is null)
            yield return new(FoodField.Grams, "What does one weigh?");
        else if (serving.Grams is <= 0 or > HeaviestG)
            yield return new(FoodField.Grams, $"More than 0 and at most {HeaviestG:0} g.");
    }

    private static IEnumerable<FoodFault> Density(ServingSheet serving) =>
        serving.Grams is < 90 or > 140
            ? [new(FoodField.Grams, "100 ml of a drink weigh between 90 and 140 g.")]
            : [];

    private static IEnumerable<FoodFault> Helpings(FoodSheet sheet)
    {
        var serving = sheet.Serving;
        if (serving.Least is null or <= 0)
            yield return new(FoodField.Least, "More than 0.");
        else if (serving.Most is null || serving.Most < serving.Least)
            yield return new(FoodField.Most, "At least the smallest helping.");
        else if (TooMuch(sheet) is { } most)
            yield return new(FoodField.Most, most);
        else if (serving.Step is null)
            yield return new(FoodField.Least, Unfitting(serving));
    }

    private static string? TooMuch(FoodSheet sheet)
    {
        var (serving, figures) = (sheet.Serving, sheet.Per100G);
        if (serving.Style == ServingStyle.Counted && serving.Most > MostPieces)
            return $"At most {MostPieces:0} at a sitting.";
        if (serving.Most > 2 * HeaviestG)
            return $"At most {HeaviestG:0} at a sitting.";
        // told at their own fields already: no sum is made of what cannot be
        if (serving.Grams is < 0 or > HeaviestG || figures.CarbohydrateG is < 0 or > 100)
            return null;
        var weightOfOne = serving.Style switch
        {
            ServingStyle.Counted => serving.Grams,
            ServingStyle.Poured => serving.Density(figures.CarbohydrateG ?? 0),
            _ => 1,
        };
        var grams = serving.Most * weightOfOne;
        return grams > HeaviestG
                ? $"That is {Rounding.Shown(grams!.Value, 0)} g: at most {HeaviestG:0} g at a sitting."
            : grams * figures.CarbohydrateG / 100 > MostCarbohydrateG
                ? $"That is {Rounding.Shown((grams * figures.CarbohydrateG / 100)!.Value, 0)} g of carbohydrate: at most {MostCarbohydrateG:0} g from one food at a sitting."
            : null;
    }

    private static string Unfitting(ServingSheet serving) =>
        serving.Style switch
        {
            ServingStyle.Poured => "Drinks are poured by 50 ml: both helpings in steps of 50.",
            ServingStyle.Weighed => "Both helpings in steps of at least 5 g.",
            _ when serving.CanBeHalved => "Whole and half pieces only.",
            _ => "Whole pieces only, unless it can be halved.",
        };

    private static IEnumerable<FoodFault> Roles(FoodSheet sheet)
    {
        var serving = sheet.Serving;
        if (sheet.Roles.Contains(MealRole.Drink) && serving.Style != ServingStyle.Poured)
            yield return new(FoodField.Style, "A drink is poured.");
        if (
            sheet.Roles.Any(r => r is MealRole.Rice or MealRole.Grain or MealRole.Noodles)
            && !(serving.Style == ServingStyle.Weighed && serving.Step is null or 50)
        )
            yield return new(
                FoodField.Style,
                "Rice, grains and noodles are weighed as cooked, by 50 g."
            );
    }

    private static IEnumerable<FoodFault> Measures(ServingSheet serving)
    {
        if (serving.Measures.Length > MostMeasures)
            yield return new(FoodField.Measures, $"At most {MostMeasures}.");
        foreach (var problem in serving.Measures.Select(OwnMeasure.Problem).OfType<string>())
            yield return new(FoodField.Measures, problem);
    }
}
