using System.Collections.Immutable;
using System.Text;
using NodaTime.Text;
using Practice.Domain.Caseload;
using Practice.Domain.Practices;

namespace Practice.Service.Audit;

/// <summary>The audit as CSV (RFC 4180, UTF-8).</summary>
internal static class AuditTable
{
    private static readonly string[] Head =
    [
        "when (UTC)",
        "who",
        "what",
        "about",
        "name",
        "from",
        "more",
        "field",
        "was",
        "became",
    ];

    public static byte[] Write(
        ImmutableArray<AuditEntry> lines,
        ImmutableDictionary<Guid, AuditSubject> subjects
    )
    {
        var table = new StringBuilder();
        Row(table, Head);
        foreach (var line in lines)
        {
            string[] facts =
            [
                InstantPattern.General.Format(line.At),
                line.By,
                line.What,
                line.About?.ToString() ?? "",
                line.About is { } about ? subjects.GetValueOrDefault(about)?.Name ?? "" : "",
                line.From,
                line.Detail,
            ];
            if (line.Changes.Count == 0)
                Row(table, [.. facts, "", "", ""]);
            foreach (var change in line.Changes.OrderBy(c => c.Field, StringComparer.Ordinal))
                Row(table, [.. facts, change.Field, change.Was, change.Became]);
        }
        return [.. Encoding.UTF8.Preamble, .. Encoding.UTF8.GetBytes(table.ToString())];
    }

    private static void Row(StringBuilder table, IEnumerable<string> cells) =>
        table.AppendJoin(',', cells.Select(Cell)).Append("\r\n");

    /// <summary>
    /// Every cell is quoted, and one that a spreadsheet would take for a formula gets an apostrophe in front: names and
    /// notes come from people.
    /// </summary>
    internal static string Cell(string text)
    {
        var harmless = text is ['=' or '+' or '-' or '@' or '\t' or '\r' or '\n' or '|', ..]
            ? $"'{text}"
            : text;
        return $"\"{harmless.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
    }
}
