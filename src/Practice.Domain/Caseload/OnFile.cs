namespace Practice.Domain.Caseload;

/// <summary>
/// A thing as it stood on file when it was read. Handing it back with the same version says which state was changed,
/// so that nobody's change is overwritten unseen.
/// </summary>
/// <param name="Value">The thing.</param>
/// <param name="Version">Grows with every change on file.</param>
public sealed record OnFile<T>(T Value, uint Version)
    where T : class;

/// <summary>What became of handing a change back: <see cref="Saved{T}"/> or <see cref="Conflict{T}"/>.</summary>
public abstract record SaveOutcome<T>
    where T : class;

/// <summary>The change is on file.</summary>
/// <param name="Now">The thing with its new version, to go on from.</param>
public sealed record Saved<T>(OnFile<T> Now) : SaveOutcome<T>
    where T : class;

/// <summary>Somebody else was faster: nothing was saved.</summary>
/// <param name="Theirs">What is on file; null when it was removed.</param>
public sealed record Conflict<T>(OnFile<T>? Theirs) : SaveOutcome<T>
    where T : class;
