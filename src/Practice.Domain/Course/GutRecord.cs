using System.Collections.Immutable;
using Practice.Domain.Evidence;

namespace Practice.Domain.Course;

/// <summary>What a client's reviewed rehearsals tell of the gut on the move. Rehearsals write it, the course reads it.</summary>
public sealed record GutRecord
{
    /// <summary>Nothing was rehearsed.</summary>
    public static GutRecord None { get; } = new();

    /// <summary>Highest rate that sat well, g/h, 0 to 150; null when none was tried.</summary>
    public decimal? ToleratedGPerHour { get; init; }

    /// <summary>Clean trials at that rate or about it, since the last there that did not sit well.</summary>
    public int CleanTrials { get; init; }

    /// <summary>The trials it rests on, each with its rate and how it went, earliest first.</summary>
    public ImmutableArray<BasisInput> Trials { get; init; } = [];
}
