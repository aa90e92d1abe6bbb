using NodaTime;

namespace Practice.Domain.Practices;

/// <summary>A member signed in on one machine, until the session ends.</summary>
public sealed record SignInSession
{
    /// <summary>Key; the cookie carries it.</summary>
    public Guid Id { get; init; } = Guid.CreateVersion7();

    /// <summary>The practice.</summary>
    public required Guid PracticeId { get; init; }

    /// <summary>The member.</summary>
    public required Guid AccountId { get; init; }

    /// <summary>Address and kind of browser at the sign-in.</summary>
    public required string From { get; init; }

    /// <summary>When it began.</summary>
    public required Instant BegunAt { get; init; }

    /// <summary>When it was last seen at work, to within some minutes.</summary>
    public required Instant SeenAt { get; init; }

    /// <summary>When it ended; null while it lasts.</summary>
    public Instant? EndedAt { get; init; }
}
