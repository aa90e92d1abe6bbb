using System.Collections.Immutable;

namespace Practice.Domain.Tables;

/// <summary>Something that can be read from a column of a table.</summary>
/// <param name="Key">Stable key.</param>
/// <param name="Name">What it is called, with its unit.</param>
/// <param name="IsNeeded">Whether no row can be read without it.</param>
/// <param name="Says">What stands in its cells.</param>
/// <param name="Example">A cell, for the file to begin with.</param>
public sealed record ImportColumn(
    string Key,
    string Name,
    bool IsNeeded,
    string Says,
    string Example
)
{
    /// <summary>Other names that tables give it.</summary>
    public ImmutableArray<string> AlsoCalled { get; init; } = [];

    /// <summary>All names that it goes by.</summary>
    internal IEnumerable<string> Names => AlsoCalled.Prepend(Key).Prepend(Name);
}
