using System.Collections.Immutable;
using Practice.Domain.Tables;

namespace Practice.Service.Tables;

/// <summary>What became of taking a table in.</summary>
public abstract record TakeOutcome;

/// <summary>All of it is on file.</summary>
/// <param name="Count">How many rows.</param>
public sealed record Taken(int Count) : TakeOutcome;

/// <summary>Nothing of it is: something is wrong with the match or with a row, or was changed meanwhile.</summary>
/// <param name="Reason">What.</param>
public sealed record NothingTaken(string Reason) : TakeOutcome;

/// <summary>Goes through a table row by row.</summary>
internal static class Reading
{
    /// <param name="table">The table.</param>
    /// <param name="match">Which column is read as what.</param>
    /// <param name="columns">What can be read.</param>
    /// <param name="read">Reads a row; what is wrong stays with the reader.</param>
    /// <param name="sameAs">What two rows must not share; null where a row has nothing of the kind.</param>
    /// <param name="known">What rows must not share with what is on file.</param>
    public static ImportReading<T> Of<T>(
        ImportTable table,
        ColumnMatch match,
        ImmutableArray<ImportColumn> columns,
        Func<RowReader, T> read,
        Func<T, (string Column, string Key)?> sameAs,
        IReadOnlySet<string> known
    )
    {
        var rows = ImmutableArray.CreateBuilder<ReadRow<T>>();
        var faults = ImmutableArray.CreateBuilder<RowFault>();
        var seen = new Dictionary<string, int>(StringComparer.Ordinal);
        var leftOut = 0;
        foreach (var row in table.Rows)
        {
            var reader = new RowReader(table, match, row, columns);
            var value = read(reader);
            if (
                sameAs(value) is { } twin
                && (known.Contains(twin.Key) || !seen.TryAdd(twin.Key, row.Number))
            )
            {
                leftOut++;
                reader = new RowReader(table, match, row, columns);
                reader.Fault(
                    twin.Column,
                    known.Contains(twin.Key)
                        ? "On file already: left out."
                        : $"The same as in row {seen[twin.Key]}: left out.",
                    isWarning: true
                );
            }
            else
                rows.Add(new ReadRow<T>(row.Number, value));
            faults.AddRange(reader.Faults);
        }
        return new ImportReading<T>(rows.ToImmutable(), faults.ToImmutable(), leftOut);
    }

    /// <summary>Why a table cannot be taken in; null when it can.</summary>
    public static NothingTaken? Refusal<T>(
        ImportReading<T> reading,
        ColumnMatch match,
        ImmutableArray<ImportColumn> columns
    ) =>
        match.Problems(columns) is [{ } problem, ..] ? new NothingTaken(problem)
        : reading.Errors > 0
            ? new NothingTaken("Something in a row is wrong. Nothing was taken in.")
        : reading.Rows.IsEmpty ? new NothingTaken("There is nothing new in the table.")
        : null;
}
