namespace Practice.Store.Clients;

/// <summary>Text from a person as a pattern that means itself.</summary>
internal static class LikePattern
{
    public static string Escape(string text) =>
        text.Replace("\\", "\\\\", StringComparison.Ordinal)
            .Replace("%", "\\%", StringComparison.Ordinal)
            .Replace("_", "\\_", StringComparison.Ordinal);
}
