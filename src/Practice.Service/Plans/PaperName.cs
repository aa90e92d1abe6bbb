using System.Text;

namespace Practice.Service.Plans;

/// <summary>Names of paper files: safe on every system, and telling apart what may lie in one folder.</summary>
internal static class PaperName
{
    /// <summary>A name of several parts; letters and digits of any script stay, all else becomes a hyphen.</summary>
    /// <param name="parts">Its parts; empty ones are left out.</param>
    public static string Of(params IEnumerable<string> parts)
    {
        var name = new StringBuilder();
        foreach (var part in parts.Where(p => p.Length > 0))
        {
            if (name.Length > 0)
                name.Append('-');
            foreach (var rune in part.Trim().EnumerateRunes())
                name.Append(Rune.IsLetterOrDigit(rune) ? rune.ToString() : "-");
        }
        return $"{name.ToString().Trim('-')}.pdf";
    }
}
