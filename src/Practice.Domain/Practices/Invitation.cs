using NodaTime;

namespace Practice.Domain.Practices;

/// <summary>A seat in the team, offered by e-mail until somebody takes it or it lapses.</summary>
public sealed class Invitation
{
    /// <summary>How long an invitation stands.</summary>
    public static readonly Duration Stands = Duration.FromDays(7);

    private Invitation() { }

    /// <summary>Key.</summary>
    public Guid Id { get; private set; }

    /// <summary>The practice that invites.</summary>
    public Guid PracticeId { get; private set; }

    /// <summary>Where the invitation went, and the name to sign in with.</summary>
    public string Email { get; private set; } = "";

    /// <summary>What the member will be allowed.</summary>
    public StaffRole Role { get; private set; }

    /// <summary>SHA-256 of the secret in the link, as hexadecimal digits; the secret itself is kept nowhere.</summary>
    public string SecretHash { get; private set; } = "";

    /// <summary>Name of who invited.</summary>
    public string InvitedBy { get; private set; } = "";

    /// <summary>When.</summary>
    public Instant InvitedAt { get; private set; }

    /// <summary>From when on the link leads nowhere.</summary>
    public Instant ExpiresAt { get; private set; }

    /// <summary>When it was accepted or taken back; null while it is open.</summary>
    public Instant? ClosedAt { get; private set; }

    /// <summary>Whether somebody took the seat.</summary>
    public bool IsAccepted { get; private set; }

    /// <summary>Offers a seat.</summary>
    /// <param name="practiceId">The practice that invites.</param>
    /// <param name="email">Where it goes.</param>
    /// <param name="role">What the member will be allowed.</param>
    /// <param name="secretHash">SHA-256 of the secret in the link, as hexadecimal digits.</param>
    /// <param name="by">Name of who invites.</param>
    /// <param name="now">When.</param>
    public static Invitation Offer(
        Guid practiceId,
        string email,
        StaffRole role,
        string secretHash,
        string by,
        Instant now
    ) =>
        new()
        {
            Id = Guid.CreateVersion7(),
            PracticeId = practiceId,
            Email = email.Trim(),
            Role = role,
            SecretHash = secretHash,
            InvitedBy = by,
            InvitedAt = now,
            ExpiresAt = now + Stands,
        };

    /// <summary>Whether the link still leads to a seat.</summary>
    public bool IsOpen(Instant now) => ClosedAt is null && now < ExpiresAt;

    /// <summary>Somebody takes the seat.</summary>
    /// <exception cref="InvalidOperationException">It is not open.</exception>
    public void Accept(Instant now)
    {
        if (!IsOpen(now))
            throw new InvalidOperationException("The invitation is not open.");
        (ClosedAt, IsAccepted) = (now, true);
    }

    /// <summary>The practice takes it back.</summary>
    public void Withdraw(Instant now) => ClosedAt ??= now;
}
