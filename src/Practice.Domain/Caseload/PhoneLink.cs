using NodaTime;

namespace Practice.Domain.Caseload;

/// <summary>
/// A client's private way to the pages of one race. It holds the fingerprint of the address and never the address
/// itself: whoever reads the database can open nothing.
/// </summary>
public sealed class PhoneLink
{
    /// <summary>How long a link works after the start of its race: time to tell how it went. Own rule.</summary>
    public static Duration AfterRace { get; } = Duration.FromDays(14);

    private PhoneLink() { }

    /// <summary>Key.</summary>
    public Guid Id { get; private set; }

    /// <summary>The practice that owns the record.</summary>
    public Guid PracticeId { get; private set; }

    /// <summary>Whose pages it opens.</summary>
    public Guid ClientId { get; private set; }

    /// <summary>The race it serves.</summary>
    public Guid RaceId { get; private set; }

    /// <summary>SHA-256 of the secret in the address, 64 lower-case hexadecimal digits.</summary>
    public string Fingerprint { get; private set; } = "";

    /// <summary>Who gave it.</summary>
    public string GivenBy { get; private set; } = "";

    /// <summary>When it was given.</summary>
    public Instant GivenAt { get; private set; }

    /// <summary>From when on it opens nothing.</summary>
    public Instant ExpiresAt { get; private set; }

    /// <summary>When it was taken back; null while it was not.</summary>
    public Instant? RevokedAt { get; private set; }

    /// <summary>When it was first opened; null before.</summary>
    public Instant? FirstUsedAt { get; private set; }

    /// <summary>When it was last opened; null before the first time.</summary>
    public Instant? LastUsedAt { get; private set; }

    /// <summary>How often it was opened.</summary>
    public int Uses { get; private set; }

    /// <summary>Gives a link for a race.</summary>
    /// <param name="practiceId">The practice.</param>
    /// <param name="clientId">Whose pages it opens.</param>
    /// <param name="raceId">The race it serves.</param>
    /// <param name="raceStart">Start of the race; the link outlives it by <see cref="AfterRace"/>.</param>
    /// <param name="fingerprint">SHA-256 of the secret, 64 hexadecimal digits.</param>
    /// <param name="by">Who gives it.</param>
    /// <param name="now">When.</param>
    /// <exception cref="ArgumentException">The fingerprint is none.</exception>
    public static PhoneLink Give(
        Guid practiceId,
        Guid clientId,
        Guid raceId,
        Instant raceStart,
        string fingerprint,
        string by,
        Instant now
    ) =>
        fingerprint is not { Length: 64 }
            ? throw new ArgumentException("A fingerprint has 64 digits.", nameof(fingerprint))
            : new()
            {
                Id = Guid.CreateVersion7(),
                PracticeId = practiceId,
                ClientId = clientId,
                RaceId = raceId,
                Fingerprint = fingerprint,
                GivenBy = by,
                GivenAt = now,
                ExpiresAt = raceStart + AfterRace,
            };

    /// <summary>Whether it opens the pages at a moment.</summary>
    public bool IsOpenAt(Instant moment) => RevokedAt is null && moment < ExpiresAt;

    /// <summary>Takes it back; a second time changes nothing.</summary>
    public void Revoke(Instant now) => RevokedAt ??= now;
}
