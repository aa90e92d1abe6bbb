using System.Text;

namespace Practice.Handouts.Paper;

/// <summary>
/// Text as it can be drawn: composed (the library does not place combining marks), without control characters, and
/// with a question mark for what the typeface lacks.
/// </summary>
internal static class CleanText
{
    public static string Of(string text, Func<Rune, bool> canDraw)
    {
        var clean = new StringBuilder(text.Length);
        foreach (var rune in Drawable(text))
            clean.Append(canDraw(rune) ? rune : new Rune('?'));
        return clean.ToString();
    }

    /// <summary>The characters of a text that the typeface lacks.</summary>
    public static IEnumerable<string> Missing(string text, Func<Rune, bool> canDraw) =>
        Drawable(text).Where(r => !canDraw(r)).Select(r => r.ToString());

    private static IEnumerable<Rune> Drawable(string text) =>
        text.Normalize(NormalizationForm.FormC)
            .EnumerateRunes()
            .Where(r => !Rune.IsControl(r) && !IsVariation(r));

    // joiners and variation selectors have no shape of their own
    private static bool IsVariation(Rune r) =>
        r.Value is 0x200B or 0x200C or 0x200D or 0xFEFF or (>= 0xFE00 and <= 0xFE0F);
}
