namespace Practice.Store.Practices;

/// <summary>
/// That a practice lives here, and nothing else of it: the one row everybody may see, because a practice's own rows
/// are seen by itself only.
/// </summary>
internal sealed record RegisteredPractice(Guid Id);
