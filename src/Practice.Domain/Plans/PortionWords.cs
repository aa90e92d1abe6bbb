using System.Globalization;
using System.Text.RegularExpressions;
using Practice.Domain.Foods;

namespace Practice.Domain.Plans;

/// <summary>
/// How a person says a portion. Number and unit are held together by a no-break space.
/// <list type="table">
/// <item><term><see cref="Full"/></term><description><c>2½ bagels (225 g)</c>, <c>350 g, about 2 cups</c>,
/// <c>300 ml, about a large glass</c>; in US words <c>2 cups (350 g)</c>, <c>10 fl oz (300 ml)</c></description></item>
/// <item><term><see cref="Household"/></term><description><c>2½ bagels</c>, <c>about 2 cups</c>,
/// <c>about a large glass</c>: the measure without the scales</description></item>
/// <item><term><see cref="Grams"/></term><description><c>225 g</c>, <c>300 ml</c>: the scales or the jug</description></item>
/// <item><term><see cref="NumberFree"/></term><description><c>two and a half bagels</c>, <c>about two cups</c>:
/// no number with a unit, for number-free papers</description></item>
/// </list>
/// </summary>
public static partial class PortionWords
{
    /// <summary>US fluid ounce, ml: 1/128 of the US gallon of 231 cubic inches.</summary>
    private const decimal MillilitresPerFluidOunce = 29.5735m;

    private const char NoBreak = '\u00A0';

    /// <summary>Household measure and scales together, as said in one breath.</summary>
    public static string Full(Portion portion, HouseholdUnits units)
    {
        var (household, grams) = (Household(portion, units), Grams(portion));
        if (household == grams)
            return grams;
        var scalesFirst =
            units == HouseholdUnits.Metric && portion.Serving.Style != ServingStyle.Counted;
        return scalesFirst ? $"{grams}, {household}" : $"{household} ({grams})";
    }

    /// <summary>The household measure alone; what the scales say where no everyday measure comes near.</summary>
    public static string Household(Portion portion, HouseholdUnits units)
    {
        if (portion.Serving.Style == ServingStyle.Counted)
            return Counted(portion, units);
        if (portion.Serving.Style == ServingStyle.Poured && units == HouseholdUnits.UsCustomary)
            return FluidOunces(portion);
        if (KitchenMeasure.Of(portion, units) is not { } measure)
            return Grams(portion);
        return units == HouseholdUnits.UsCustomary
            ? (measure.IsExact ? "" : "about ") + Count(measure.Count, measure.Name, measure.Plural)
            : "about " + MeasurePhrase(measure);
    }

    /// <summary>What the scales or the jug say: <c>225 g</c>, or <c>300 ml</c> for what is poured.</summary>
    public static string Grams(Portion portion) =>
        portion.Serving.Style == ServingStyle.Poured
            ? Number(portion.Millilitres) + NoBreak + "ml"
            : Number(portion.Grams) + NoBreak + "g";

    /// <summary>The portion in words, without any number beside a unit.</summary>
    public static string NumberFree(Portion portion, HouseholdUnits units)
    {
        var serving = portion.Serving;
        if (serving.Style == ServingStyle.Counted)
            return KitchenNumber.Phrase(
                portion.Steps * serving.UnitsPerStep,
                InWords(serving.UnitIn(units)),
                InWords(serving.UnitPluralIn(units), plural: true)
            );
        if (KitchenMeasure.Of(portion, units, byEye: true) is { } measure)
            return "about "
                + KitchenNumber.Phrase(
                    measure.Count,
                    InWords(measure.Name),
                    InWords(measure.Plural, plural: true)
                );
        return serving.Style == ServingStyle.Poured ? Glasses(portion) : BySize(portion);
    }

    private static string Counted(Portion portion, HouseholdUnits units)
    {
        var serving = portion.Serving;
        var count = portion.Steps * serving.UnitsPerStep;
        return Count(count, serving.UnitIn(units), serving.UnitPluralIn(units));
    }

    // "2 × 125 g pots": a unit that brings a number of its own must not run into the count
    private static string Count(decimal count, string one, string several)
    {
        var unit = KitchenNumber.IsPlural(count) ? several : one;
        var times = char.IsAsciiDigit(unit[0]) ? $"×{NoBreak}" : "";
        return KitchenNumber.Figures(count) + NoBreak + times + unit;
    }

    private static string MeasurePhrase(KitchenMeasure measure) =>
        measure.Count is 1m or 0.5m
            ? KitchenNumber.Phrase(measure.Count, measure.Name, measure.Plural)
            : Count(measure.Count, measure.Name, measure.Plural);

    private static string FluidOunces(Portion portion)
    {
        var ounces = portion.Millilitres / MillilitresPerFluidOunce;
        var said =
            ounces < 4
                ? Math.Max(0.5m, Math.Round(ounces * 2, MidpointRounding.AwayFromZero) / 2)
                : Math.Round(ounces, MidpointRounding.AwayFromZero);
        return KitchenNumber.Figures(said) + NoBreak + "fl" + NoBreak + "oz";
    }

    // a glass of about 250 ml: common practice, no source
    private static string Glasses(Portion portion) =>
        portion.Millilitres switch
        {
            <= 75 => "a splash",
            <= 175 => "a small glass",
            <= 275 => "a glass",
            <= 375 => "a large glass",
            var much => "about "
                + KitchenNumber.Phrase(
                    Math.Round(much / 125, MidpointRounding.AwayFromZero) / 2,
                    "glass",
                    "glasses"
                ),
        };

    // where no measure is known, the food's own range of servings says what is little and what is much
    private static string BySize(Portion portion)
    {
        var (min, max) = (portion.Serving.MinSteps, portion.Serving.MaxSteps);
        var place = max == min ? 0.5 : (double)(portion.Steps - min) / (max - min);
        return place switch
        {
            < 0.34 => "a small helping",
            <= 0.67 => "a good helping",
            _ => "a large helping",
        };
    }

    /// <summary>A unit without figures or abbreviations: <c>125 g pot</c> is a pot, <c>tbsp</c> a tablespoon.</summary>
    private static string InWords(string unit, bool plural = false)
    {
        var s = plural ? "s" : "";
        return OwnNumber().Replace(unit, "") switch
        {
            "tbsp" => "tablespoon" + s,
            "tsp" => "teaspoon" + s,
            "" => "piece" + s,
            var words => words,
        };
    }

    private static string Number(decimal amount) =>
        Math.Round(amount, MidpointRounding.AwayFromZero)
            .ToString("0", CultureInfo.InvariantCulture);

    [GeneratedRegex(@"\d[\d.,]*[\s\u00A0]*(?:g|kg|ml|l|cm|mm|oz|fl oz|in|inch)\b[\s\u00A0-]*")]
    private static partial Regex OwnNumber();
}
