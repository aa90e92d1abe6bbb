using System.Collections.Immutable;

namespace Practice.Handouts.Blocks;

/// <summary>A table of grouped rows; the first column names the group and spans its rows.</summary>
/// <param name="Summary">What the table holds, for those who hear it.</param>
/// <param name="Columns">The columns; the first is the group's.</param>
/// <param name="Groups">The groups.</param>
/// <param name="Total">The last row; null for none.</param>
public sealed record Table(
    string Summary,
    ImmutableArray<Column> Columns,
    ImmutableArray<RowGroup> Groups,
    Total? Total
) : Block;

/// <summary>A column.</summary>
/// <param name="Header">Its heading.</param>
/// <param name="Weight">Its part of the width.</param>
/// <param name="IsRight">Whether it is set to the right.</param>
/// <param name="IsFigure">Whether its digits stand on a fixed pitch, so that they can be compared down the column.</param>
public sealed record Column(
    string Header,
    double Weight,
    bool IsRight = false,
    bool IsFigure = false
);

/// <summary>Rows under one head.</summary>
/// <param name="Head">What they share.</param>
/// <param name="Rows">Cells of each row, one for every column after the first.</param>
public sealed record RowGroup(GroupHead Head, ImmutableArray<ImmutableArray<Words>> Rows);

/// <summary>The head of a group.</summary>
/// <param name="Lead">Set large: the time.</param>
/// <param name="Title">What it is.</param>
/// <param name="Note">A word to it; may be empty.</param>
public sealed record GroupHead(string Lead, string Title, string Note = "");

/// <summary>The last row of a table.</summary>
/// <param name="Label">What is summed.</param>
/// <param name="Remark">A word to it; may be empty.</param>
/// <param name="Value">The sum.</param>
public sealed record Total(string Label, string Remark, string Value);
