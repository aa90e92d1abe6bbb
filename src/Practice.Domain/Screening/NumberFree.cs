using System.Collections.Immutable;
using System.Text.RegularExpressions;

namespace Practice.Domain.Screening;

/// <summary>
/// Guards papers and screens that must show no number with a unit of body, energy or nutrient. Household measures
/// ("two slices", "1 cup"), times and distances may stay.
/// </summary>
public static partial class NumberFree
{
    // longest first where one unit begins another; a letter after the unit makes it another word ("6 large eggs")
    private const string Unit =
        "(?:kilogram(?:me)?s?|kilos?|kgs?|milligram(?:me)?s?|mg|micrograms?|mcg|[µμ]g|gram(?:me)?s?|gr|g|"
        + "kilocalor(?:ie|ies)|kcals?|calor(?:ie|ies)|cals?|kilojoules?|kj|mj|mmol|"
        + "millilit(?:er|re)s?|ml|centilit(?:er|re)s?|cl|decilit(?:er|re)s?|dl|lit(?:er|re)s?|l|"
        + @"ounces?|oz|pounds?|lbs?|per\s+cent|percent)(?![\p{L}\p{M}])|[%％‰]";

    // any white space, also non-breaking and thin, a hyphen, and marks of no width
    private const string Gap = @"[\s\u200B\u2060\uFEFF\-\u2010\u2011]*";

    /// <summary>Every number with a unit in a text, and every unit that heads a column as in "(g)".</summary>
    public static ImmutableArray<string> Violations(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return [.. Numbers().Matches(text).Select(match => match.Value)];
    }

    /// <summary>Whether a text may stand on a number-free paper.</summary>
    public static bool Allows(string text) => Violations(text).IsEmpty;

    // \p{N}: also ½ and digits of other scripts
    [GeneratedRegex(
        @"\p{N}(?:[.,]?\p{N})*"
            + Gap
            + "(?:"
            + Unit
            + @")|\(\s*(?:"
            + Unit
            + @")(?:\s*/\s*\p{L}+)*\s*\)",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant
    )]
    private static partial Regex Numbers();
}
