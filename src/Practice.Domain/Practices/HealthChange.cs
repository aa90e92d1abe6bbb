namespace Practice.Domain.Practices;

/// <summary>
/// One health fact before and after a change. It hangs on a line of audit, is as unchangeable as that line, and unlike
/// it goes when the client is erased.
/// </summary>
public sealed record HealthChange
{
    /// <summary>Key.</summary>
    public Guid Id { get; init; } = Guid.CreateVersion7();

    /// <summary>The practice it belongs to.</summary>
    public required Guid PracticeId { get; init; }

    /// <summary>The line of audit it explains.</summary>
    public Guid EntryId { get; init; }

    /// <summary>Whose fact it is.</summary>
    public required Guid ClientId { get; init; }

    /// <summary>Which fact, such as <c>diet allergens</c>.</summary>
    public required string Field { get; init; }

    /// <summary>What was on file; empty for nothing.</summary>
    public required string Was { get; init; }

    /// <summary>What is on file now; empty for nothing.</summary>
    public required string Became { get; init; }
}
