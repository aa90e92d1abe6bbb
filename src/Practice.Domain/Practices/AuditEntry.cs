using NodaTime;

namespace Practice.Domain.Practices;

/// <summary>One line of a practice's audit: who did what to what, and when. It is never changed and never removed.</summary>
public sealed record AuditEntry
{
    /// <summary>Key; keys of later entries are larger.</summary>
    public Guid Id { get; init; } = Guid.CreateVersion7();

    /// <summary>The practice it belongs to.</summary>
    public required Guid PracticeId { get; init; }

    /// <summary>When.</summary>
    public required Instant At { get; init; }

    /// <summary>The account that acted; null for the tool itself.</summary>
    public Guid? AccountId { get; init; }

    /// <summary>Name of who acted, as it was then.</summary>
    public required string By { get; init; }

    /// <summary>What was done, a stable key such as <c>plan-issued</c>.</summary>
    public required string What { get; init; }

    /// <summary>Key of the client, race or plan it was done to.</summary>
    public Guid? About { get; init; }

    /// <summary>From where: network address and kind of browser; empty for the tool itself.</summary>
    public string From { get; init; } = "";

    /// <summary>Health facts that changed with it.</summary>
    public ICollection<HealthChange> Changes { get; init; } = [];

    /// <summary>More in words. No health facts: the entry outlives an erased client.</summary>
    public string Detail { get; init; } = "";
}
