using NodaTime;

namespace Practice.Store.Mail;

/// <summary>
/// That a letter waits to be sent, and nothing else of it. Whoever sends has no practice yet, so these rows belong to
/// none: the letter itself is seen only inside its practice.
/// </summary>
internal sealed class LetterDue
{
    public required Guid LetterId { get; init; }

    /// <summary>The practice that wrote it.</summary>
    public required Guid Writer { get; init; }

    /// <summary>Not to be tried before.</summary>
    public required Instant DueAt { get; set; }
}
