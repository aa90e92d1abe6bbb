using Microsoft.AspNetCore.Identity;
using NodaTime;
using Practice.Domain.Practices;

namespace Practice.Store.Accounts;

/// <summary>Somebody of a practice's team who can sign in.</summary>
public sealed class Account : IdentityUser<Guid>
{
    /// <summary>The practice the account belongs to.</summary>
    public Guid PracticeId { get; set; }

    /// <summary>Name as shown.</summary>
    public string DisplayName { get; set; } = "";

    /// <summary>What the member may do.</summary>
    public StaffRole Role { get; set; }

    /// <summary>From when on the member may not sign in any more; null for a member at work.</summary>
    public Instant? DeactivatedAt { get; set; }
}
