using System.Collections.Immutable;
using NodaTime;

namespace Practice.Domain.Practices;

/// <summary>What an e-mail is about.</summary>
public enum LetterKind
{
    /// <summary>Tries the mail server out.</summary>
    Test,

    /// <summary>Offers a seat in the team.</summary>
    Invitation,

    /// <summary>Lets a member choose a new password.</summary>
    PasswordReset,

    /// <summary>Hands a plan over as a paper.</summary>
    Handout,

    /// <summary>Hands over the private link to the phone pages.</summary>
    PhoneLink,

    /// <summary>Reminds a client of a rehearsal.</summary>
    RehearsalReminder,

    /// <summary>Thanks a client for feedback.</summary>
    Thanks,
}

/// <summary>A rehearsal as a letter speaks of it: moved to another day it is another matter.</summary>
/// <param name="RehearsalId">Which rehearsal.</param>
/// <param name="RunOn">The day of its run.</param>
public sealed record RehearsalDay(Guid RehearsalId, LocalDate RunOn);

/// <summary>
/// An e-mail of the practice: written together with what caused it, sent as soon as the mail server takes it. What it
/// said is kept sealed until it is sent and then forgotten; that it was sent, and when, stays.
/// </summary>
public sealed class Letter
{
    /// <summary>Waits between tries; after the last one the letter is given up.</summary>
    private static readonly ImmutableArray<Duration> Waits =
    [
        Duration.FromMinutes(1),
        Duration.FromMinutes(5),
        Duration.FromMinutes(15),
        Duration.FromHours(1),
        Duration.FromHours(4),
        Duration.FromHours(12),
        Duration.FromHours(24),
    ];

    private Letter() { }

    /// <summary>Key.</summary>
    public Guid Id { get; private set; }

    /// <summary>The practice that writes.</summary>
    public Guid PracticeId { get; private set; }

    /// <summary>The client it went to; null when it went to a member of the team.</summary>
    public Guid? ClientId { get; private set; }

    /// <summary>The rehearsal it is about; null for any other letter.</summary>
    public Guid? RehearsalId { get; private set; }

    /// <summary>The day of that rehearsal's run, as the letter tells it; null for any other letter.</summary>
    public LocalDate? RunOn { get; private set; }

    /// <summary>What it is about.</summary>
    public LetterKind Kind { get; private set; }

    /// <summary>Address it goes to.</summary>
    public string To { get; private set; } = "";

    /// <summary>Subject line; never a health fact.</summary>
    public string Subject { get; private set; } = "";

    /// <summary>Text and enclosures, sealed; empty once it is sent or given up.</summary>
    public ImmutableArray<byte> Sealed { get; private set; } = [];

    /// <summary>Name of who had it sent.</summary>
    public string WrittenBy { get; private set; } = "";

    /// <summary>When it was written.</summary>
    public Instant WrittenAt { get; private set; }

    /// <summary>When the mail server took it; null before.</summary>
    public Instant? SentAt { get; private set; }

    /// <summary>When it was given up; null otherwise.</summary>
    public Instant? GivenUpAt { get; private set; }

    /// <summary>Tries that failed.</summary>
    public int FailedTries { get; private set; }

    /// <summary>What the last failed try ran into; empty before.</summary>
    public string Problem { get; private set; } = "";

    /// <summary>Writes a letter.</summary>
    /// <param name="practiceId">The practice that writes.</param>
    /// <param name="clientId">The client it goes to; null for a member of the team.</param>
    /// <param name="kind">What it is about.</param>
    /// <param name="to">Address it goes to.</param>
    /// <param name="subject">Subject line; never a health fact.</param>
    /// <param name="content">Text and enclosures, sealed.</param>
    /// <param name="by">Name of who has it sent.</param>
    /// <param name="now">When.</param>
    /// <param name="about">The rehearsal it is about; null for any other letter.</param>
    public static Letter Write(
        Guid practiceId,
        Guid? clientId,
        LetterKind kind,
        string to,
        string subject,
        ImmutableArray<byte> content,
        string by,
        Instant now,
        RehearsalDay? about = null
    ) =>
        new()
        {
            Id = Guid.CreateVersion7(),
            PracticeId = practiceId,
            ClientId = clientId,
            RehearsalId = about?.RehearsalId,
            RunOn = about?.RunOn,
            Kind = kind,
            To = to,
            Subject = subject,
            Sealed = content,
            WrittenBy = by,
            WrittenAt = now,
        };

    /// <summary>Whether it still waits to be sent.</summary>
    public bool IsWaiting => SentAt is null && GivenUpAt is null;

    /// <summary>The mail server took it: what it said is forgotten.</summary>
    public void Sent(Instant now) => (SentAt, Problem, Sealed) = (now, "", []);

    /// <summary>A try failed.</summary>
    /// <param name="problem">What it ran into.</param>
    /// <param name="now">When.</param>
    /// <returns>When to try again; null when it is given up.</returns>
    public Instant? Failed(string problem, Instant now)
    {
        Problem = problem.Length > 500 ? problem[..500] : problem;
        if (FailedTries++ < Waits.Length)
            return now + Waits[FailedTries - 1];
        GiveUp(now);
        return null;
    }

    /// <summary>What it tells of is no longer so: it is not sent.</summary>
    /// <param name="why">What changed.</param>
    /// <param name="now">When.</param>
    public void CallOff(string why, Instant now)
    {
        Problem = why;
        GiveUp(now);
    }

    private void GiveUp(Instant now) => (GivenUpAt, Sealed) = (now, []);
}
