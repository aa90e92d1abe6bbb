using System.Collections.Immutable;

namespace Practice.Domain.Tables;

/// <summary>A row as it was read.</summary>
/// <param name="Row">Its number, as a spreadsheet shows it.</param>
/// <param name="Value">What it says.</param>
public sealed record ReadRow<T>(int Row, T Value);

/// <summary>A table as it would be taken in: all of it or nothing.</summary>
/// <param name="Rows">The rows that would be taken in.</param>
/// <param name="Faults">What is wrong or odd, row by row.</param>
/// <param name="LeftOut">How many rows are left out, because they are on file or in the table already.</param>
public sealed record ImportReading<T>(
    ImmutableArray<ReadRow<T>> Rows,
    ImmutableArray<RowFault> Faults,
    int LeftOut
)
{
    /// <summary>Whether it can be taken in.</summary>
    public bool CanBeTaken => !Rows.IsEmpty && Faults.All(f => f.IsWarning);

    /// <summary>How many things are wrong.</summary>
    public int Errors => Faults.Count(f => !f.IsWarning);
}
