namespace Practice.Domain.Tables;

/// <summary>Something wrong, or odd, in a row of a table.</summary>
/// <param name="Row">Number of the row, as a spreadsheet shows it.</param>
/// <param name="Column">Name of the column.</param>
/// <param name="Text">What, and what to do.</param>
/// <param name="IsWarning">Whether the row is read all the same.</param>
public sealed record RowFault(int Row, string Column, string Text, bool IsWarning = false);
