using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace Practice.Domain.Foods;

/// <summary>Splits names into words that compare without accents and case: <c>Purée</c> is <c>puree</c>.</summary>
internal static class NameWords
{
    public static ImmutableArray<string> Of(string text)
    {
        var plain = new StringBuilder(text.Length);
        foreach (var letter in text.Normalize(NormalizationForm.FormD))
        {
            if (CharUnicodeInfo.GetUnicodeCategory(letter) != UnicodeCategory.NonSpacingMark)
            {
                plain.Append(char.IsLetterOrDigit(letter) ? char.ToLowerInvariant(letter) : ' ');
            }
        }

        return [.. plain.ToString().Split(' ', StringSplitOptions.RemoveEmptyEntries)];
    }
}
