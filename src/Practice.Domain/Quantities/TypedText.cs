using System.Text;

namespace Practice.Domain.Quantities;

/// <summary>
/// What a person typed as text: whether it can be kept. Half characters and unseen ones that steer can be stored by no
/// database, printed on no paper, and were never meant.
/// </summary>
public static class TypedText
{
    /// <summary>What is wrong with a text; null when it can be kept.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="most">The most characters it may have.</param>
    /// <param name="ofLines">Whether it may have line ends and tabs.</param>
    public static string? Problem(string? text, int most, bool ofLines = false)
    {
        if (text is null)
            return null;
        if (text.Length > most)
            return $"At most {Rounding.Shown(most, 0)} characters: there are {Rounding.Shown(text.Length, 0)}.";
        foreach (var rune in text.EnumerateRunes())
        {
            if (rune == Rune.ReplacementChar)
                return "There is half a character in it. Type it anew.";
            if (Rune.IsControl(rune) && !(ofLines && rune.Value is '\n' or '\r' or '\t'))
                return "There is an unseen character in it. Type it anew.";
        }
        return null;
    }

    /// <summary>The text without blanks at its ends.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="most">The most characters it may have.</param>
    /// <param name="what">What it is, as a sentence begins: <c>A name</c>.</param>
    /// <param name="ofLines">Whether it may have line ends and tabs.</param>
    /// <exception cref="ArgumentException">It cannot be kept; the message says why.</exception>
    public static string Checked(string text, int most, string what, bool ofLines = false)
    {
        ArgumentNullException.ThrowIfNull(text);
        return Problem(text, most, ofLines) is { } problem
            ? throw new ArgumentException($"{what}: {problem}")
            : text.Trim();
    }
}
