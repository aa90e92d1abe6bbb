namespace Practice.Domain.Practices;

/// <summary>What a member of a practice may do.</summary>
public enum StaffRole
{
    /// <summary>Books, enters and prints; never issues a plan or lifts a hold.</summary>
    Assistant,

    /// <summary>Builds, checks and issues plans; records clearances.</summary>
    Practitioner,

    /// <summary>A practitioner who also runs the practice: brand, team, audit, export.</summary>
    Owner,
}

/// <summary>A member of a practice's team.</summary>
/// <param name="AccountId">Key of the account.</param>
/// <param name="Name">Name as shown.</param>
/// <param name="Email">Where to write to, and the name to sign in with.</param>
/// <param name="Role">What the member may do.</param>
public sealed record TeamMember(Guid AccountId, string Name, string Email, StaffRole Role)
{
    /// <summary>Whether the member may sign in.</summary>
    public bool IsActive { get; init; } = true;
}
