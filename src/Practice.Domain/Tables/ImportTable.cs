using System.Collections.Immutable;
using System.Text.RegularExpressions;

namespace Practice.Domain.Tables;

/// <summary>A row of a table that somebody brought.</summary>
/// <param name="Number">Its number as a spreadsheet shows it; the names of the columns are row 1.</param>
/// <param name="Cells">What stands in it, as text.</param>
public sealed record ImportRow(int Number, ImmutableArray<string> Cells);

/// <summary>A table that somebody brought: nothing in it is believed yet.</summary>
/// <param name="Columns">Names of the columns.</param>
/// <param name="Rows">Rows with anything in them.</param>
public sealed partial record ImportTable(
    ImmutableArray<string> Columns,
    ImmutableArray<ImportRow> Rows
)
{
    /// <summary>The largest file, in bytes.</summary>
    public const int LargestBytes = 5_000_000;

    /// <summary>The most rows that are read at once.</summary>
    public const int MostRows = 5_000;

    /// <summary>Whether some number in it can only have a comma before its decimals: then a point marks thousands.</summary>
    public bool UsesDecimalComma { get; } =
        Rows.Any(row => row.Cells.Any(cell => CommaDecimal().IsMatch(cell)));

    [GeneratedRegex(@"^\s*[+-]?\d+,(\d{1,2}|\d{4,})\s*$")]
    private static partial Regex CommaDecimal();
}
