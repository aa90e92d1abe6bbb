namespace Practice.Domain.Caseload;

/// <summary>What kind of thing a line of audit is about.</summary>
public enum SubjectKind
{
    /// <summary>A client.</summary>
    Client,

    /// <summary>A race of a client.</summary>
    Race,

    /// <summary>A plan version for a race.</summary>
    Plan,

    /// <summary>A member of the team.</summary>
    Member,

    /// <summary>A food of the practice's own.</summary>
    Food,
}

/// <summary>What a line of audit is about, in words.</summary>
/// <param name="Kind">What kind of thing.</param>
/// <param name="Name">Its name, with whose it is.</param>
public sealed record AuditSubject(SubjectKind Kind, string Name);
