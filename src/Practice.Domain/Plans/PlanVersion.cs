using NodaTime;

namespace Practice.Domain.Plans;

/// <summary>Where a plan version stands in its life.</summary>
public enum PlanStatus
{
    /// <summary>Being worked on.</summary>
    Draft,

    /// <summary>Handed to the client; never changes again.</summary>
    Issued,

    /// <summary>Was issued, no longer holds.</summary>
    Withdrawn,
}

/// <summary>One version of a race's plan. Only a draft can be edited.</summary>
public sealed class PlanVersion
{
    private PlanVersion() { }

    /// <summary>Key.</summary>
    public Guid Id { get; private set; }

    /// <summary>The practice that owns the record.</summary>
    public Guid PracticeId { get; private set; }

    /// <summary>The race it is for.</summary>
    public Guid RaceId { get; private set; }

    /// <summary>1, 2, 3 ... within the race.</summary>
    public int Number { get; private set; }

    /// <summary>Where it stands.</summary>
    public PlanStatus Status { get; private set; }

    /// <summary>The plan itself.</summary>
    public RaceWeekPlan Plan { get; private set; } = null!;

    /// <summary>When it was begun.</summary>
    public Instant CreatedAt { get; private set; }

    /// <summary>When it was last edited.</summary>
    public Instant EditedAt { get; private set; }

    /// <summary>Who issued it.</summary>
    public string? IssuedBy { get; private set; }

    /// <summary>When it was issued.</summary>
    public Instant? IssuedAt { get; private set; }

    /// <summary>Why this version came to be, or why it was withdrawn.</summary>
    public string Reason { get; private set; } = "";

    /// <summary>Begins a draft.</summary>
    public static PlanVersion Draft(
        Guid practiceId,
        Guid raceId,
        int number,
        RaceWeekPlan plan,
        string reason,
        Instant now
    ) =>
        new()
        {
            Id = Guid.CreateVersion7(),
            PracticeId = practiceId,
            RaceId = raceId,
            Number = number,
            Plan = plan,
            Reason = reason,
            CreatedAt = now,
            EditedAt = now,
        };

    /// <summary>Replaces the plan of a draft.</summary>
    /// <exception cref="InvalidOperationException">The version is issued or withdrawn.</exception>
    public void Edit(RaceWeekPlan plan, Instant now)
    {
        if (Status != PlanStatus.Draft)
            throw new InvalidOperationException("Only a draft can be edited; begin a new version.");
        (Plan, EditedAt) = (plan, now);
    }

    /// <summary>Hands the draft over; from now on it never changes.</summary>
    /// <exception cref="InvalidOperationException">The version is not a draft.</exception>
    public void Issue(string by, Instant now)
    {
        if (Status != PlanStatus.Draft)
            throw new InvalidOperationException("Only a draft can be issued.");
        (Status, IssuedBy, IssuedAt) = (PlanStatus.Issued, by, now);
    }

    /// <summary>Takes an issued version back.</summary>
    /// <exception cref="InvalidOperationException">The version is not issued.</exception>
    public void Withdraw(string reason)
    {
        if (Status != PlanStatus.Issued)
            throw new InvalidOperationException("Only an issued version can be withdrawn.");
        (Status, Reason) = (PlanStatus.Withdrawn, reason);
    }
}
