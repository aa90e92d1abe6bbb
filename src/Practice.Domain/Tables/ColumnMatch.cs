using System.Collections.Immutable;
using System.Text;

namespace Practice.Domain.Tables;

/// <summary>Which column of a table is read as what.</summary>
/// <param name="Keys">For each column of the table the key it is read as; null where it is left out.</param>
public sealed record ColumnMatch(ImmutableArray<string?> Keys)
{
    /// <summary>Words of headings that say how much, not what.</summary>
    private static readonly ImmutableHashSet<string> Units =
    [
        "g",
        "mg",
        "kcal",
        "ml",
        "cm",
        "kg",
        "km",
        "per",
        "in",
        "100",
        "100g",
        "100ml",
        "of",
        "which",
        "total",
        "the",
    ];

    /// <summary>The match that the headings suggest; each column is guessed at most once.</summary>
    public static ColumnMatch Guess(
        ImmutableArray<string> headings,
        IReadOnlyCollection<ImportColumn> columns
    )
    {
        ArgumentNullException.ThrowIfNull(columns);
        var left = columns.ToList();
        var keys = headings.Select(string? (_) => null).ToArray();
        // a column's own name goes before other names, and all of a heading before its meaning without units
        Choose(column => [column.Name, column.Key], Letters);
        Choose(column => column.Names, Letters);
        Choose(column => column.Names, Meaning);
        return new([.. keys]);

        void Choose(Func<ImportColumn, IEnumerable<string>> names, Func<string, string> read)
        {
            for (var i = 0; i < keys.Length; i++)
                if (
                    keys[i] is null
                    && read(headings[i]) is { Length: > 0 } heading
                    && left.Find(c => names(c).Any(n => read(n) == heading)) is { } found
                )
                {
                    keys[i] = found.Key;
                    left.Remove(found);
                }
        }
    }

    /// <summary>The match with one column read as something else.</summary>
    public ColumnMatch With(int column, string? key) => new(Keys.SetItem(column, key));

    /// <summary>The column that is read as that; null when none is.</summary>
    public int? ColumnOf(string key) => Keys.IndexOf(key) is >= 0 and var at ? at : null;

    /// <summary>What of the match cannot be: something needed that no column brings, something that two bring.</summary>
    public ImmutableArray<string> Problems(IReadOnlyCollection<ImportColumn> columns) =>
        [
            .. columns
                .Where(c => c.IsNeeded && ColumnOf(c.Key) is null)
                .Select(c => $"No column is read as {c.Name}."),
            .. columns
                .Where(c => Keys.Count(k => k == c.Key) > 1)
                .Select(c => $"More than one column is read as {c.Name}."),
        ];

    private static string Letters(string heading) => string.Concat(Words(heading));

    private static string Meaning(string heading) =>
        string.Concat(Words(heading).Where(word => !Units.Contains(word)));

    private static string[] Words(string heading)
    {
        var plain = new StringBuilder(heading.Length);
        foreach (var letter in heading)
            plain.Append(char.IsLetterOrDigit(letter) ? char.ToLowerInvariant(letter) : ' ');
        return plain.ToString().Split(' ', StringSplitOptions.RemoveEmptyEntries);
    }
}
