using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace Practice.Domain.Foods;

/// <summary>Splits names into words that compare without accents and case: <c>Purée</c> is <c>puree</c>.</summary>
public static class NameWords
{
    /// <summary>Letters that Unicode does not take apart, and what they are typed as.</summary>
    private static readonly FrozenDictionary<char, string> Whole = new Dictionary<char, string>
    {
        ['ø'] = "o",
        ['ł'] = "l",
        ['đ'] = "d",
        ['ð'] = "d",
        ['ħ'] = "h",
        ['ı'] = "i",
        ['ŧ'] = "t",
        ['ß'] = "ss",
        ['æ'] = "ae",
        ['œ'] = "oe",
        ['þ'] = "th",
    }.ToFrozenDictionary();

    /// <summary>Whether for each word typed a word of the name begins with it.</summary>
    public static bool Find(string name, string typed)
    {
        var words = Of(name);
        return Of(typed)
            .All(part => words.Any(word => word.StartsWith(part, StringComparison.Ordinal)));
    }

    /// <summary>The words of a text, plain.</summary>
    public static ImmutableArray<string> Of(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var plain = new StringBuilder(text.Length);
        foreach (var letter in text.Normalize(NormalizationForm.FormD))
        {
            if (CharUnicodeInfo.GetUnicodeCategory(letter) == UnicodeCategory.NonSpacingMark)
                continue;
            var small = char.ToLowerInvariant(letter);
            if (Whole.TryGetValue(small, out var spelt))
                plain.Append(spelt);
            else
                plain.Append(char.IsLetterOrDigit(small) ? small : ' ');
        }

        return [.. plain.ToString().Split(' ', StringSplitOptions.RemoveEmptyEntries)];
    }
}
