using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Plans;
using Practice.Domain.Practices;

namespace Practice.Domain.Rehearsals;

/// <summary>How much of the loading is tried.</summary>
public enum RehearsalKind
{
    /// <summary>One high-carbohydrate day, or an evening and a breakfast.</summary>
    Partial,

    /// <summary>The loading with its foods, the race breakfast and fuelling on the run.</summary>
    Full,
}

/// <summary>Where a rehearsal stands in its life.</summary>
public enum RehearsalStatus
{
    /// <summary>Has a date.</summary>
    Booked,

    /// <summary>The client told what happened.</summary>
    FedBack,

    /// <summary>The practitioner has read it and decided.</summary>
    Reviewed,

    /// <summary>Did not take place.</summary>
    Cancelled,
}

/// <summary>The breakfast to try, as on race morning.</summary>
/// <param name="HoursBeforeRun">Hours before the run, 0.5 to 5.</param>
/// <param name="CarbohydrateG">Carbohydrate, g, 0 to 500.</param>
/// <param name="What">What is eaten and drunk.</param>
public sealed record BreakfastTrial(decimal HoursBeforeRun, decimal CarbohydrateG, string What);

/// <summary>The fuelling to try on the run.</summary>
/// <param name="CarbohydrateGPerHour">Carbohydrate, g/h, 0 to 120.</param>
/// <param name="FluidMlPerHour">Drink, ml/h, 0 to 1000; null for thirst alone.</param>
/// <param name="What">Which products, how often.</param>
public sealed record RunFuelTrial(
    decimal CarbohydrateGPerHour,
    decimal? FluidMlPerHour,
    string What
);

/// <summary>What is to be tried, as booked.</summary>
public sealed record RehearsalDetails
{
    /// <summary>Day of the run that the food leads up to.</summary>
    public required LocalDate RunOn { get; init; }

    /// <summary>How much is tried.</summary>
    public required RehearsalKind Kind { get; init; }

    /// <summary>Which part of which plan version is eaten.</summary>
    public required RehearsedPart Part { get; init; }

    /// <summary>Fraction of the planned amounts, above 0 to 1; 1 for a full rehearsal.</summary>
    public decimal Dose { get; init; } = 1;

    /// <summary>Race-time breakfast to try.</summary>
    public BreakfastTrial? Breakfast { get; init; }

    /// <summary>Fuelling on the run to try.</summary>
    public RunFuelTrial? RunFuel { get; init; }

    /// <summary>Why it is done, and what is changed since the last one.</summary>
    public string Reason { get; init; } = "";
}

/// <summary>What the practitioner made of a rehearsal.</summary>
/// <param name="Verdict">Her verdict; the tool's may differ.</param>
/// <param name="By">Who decided.</param>
/// <param name="At">When.</param>
/// <param name="Note">Why, and what changes.</param>
public sealed record ReviewDecision(TrialVerdict Verdict, string By, Instant At, string Note)
{
    /// <summary>The lines that the tool's own verdict followed then; null from before a practice could draw its own.</summary>
    public SymptomThresholds? Thresholds { get; init; }

    /// <summary>What she said to each change that was proposed, in the order of the proposals.</summary>
    public ImmutableArray<ProposalAnswer> Answers { get; init; } = [];

    /// <summary>The plan version that came of it; null when the plan stayed as it was.</summary>
    public Guid? PlanVersionId { get; init; }

    /// <summary>The plan version that was changed; null when the plan stayed as it was.</summary>
    public Guid? FromVersionId { get; init; }
}

/// <summary>A proposed change, accepted or not.</summary>
/// <param name="Key">Key of the proposal.</param>
/// <param name="Title">The change in a few words, as it was read.</param>
/// <param name="Accepted">Whether it was taken.</param>
public sealed record ProposalAnswer(string Key, string Title, bool Accepted);

/// <summary>A dated trial of some or all of the plan, with what the client told of it.</summary>
public sealed class Rehearsal
{
    private Rehearsal() { }

    /// <summary>Key.</summary>
    public Guid Id { get; private set; }

    /// <summary>The practice that owns the record.</summary>
    public Guid PracticeId { get; private set; }

    /// <summary>Who rehearses.</summary>
    public Guid ClientId { get; private set; }

    /// <summary>The race it is for.</summary>
    public Guid RaceId { get; private set; }

    /// <summary>What is tried.</summary>
    public RehearsalDetails Details { get; private set; } = null!;

    /// <summary>The plan as it was when it was booked from: a later edit never changes what was asked of the client.</summary>
    public RaceWeekPlan Plan { get; private set; } = null!;

    /// <summary>Day of the run.</summary>
    public LocalDate RunOn { get; private set; }

    /// <summary>How much is tried.</summary>
    public RehearsalKind Kind { get; private set; }

    /// <summary>Where it stands.</summary>
    public RehearsalStatus Status { get; private set; }

    /// <summary>What the client told; null before.</summary>
    public Feedback? Feedback { get; private set; }

    /// <summary>What the practitioner decided; null before.</summary>
    public ReviewDecision? Decision { get; private set; }

    /// <summary>Why it was cancelled; empty when it was not.</summary>
    public string CancelledBecause { get; private set; } = "";

    /// <summary>Books a rehearsal. Whether the day is wise is <see cref="RehearsalCalendar"/>'s to say.</summary>
    /// <exception cref="ArgumentException">The part, the dose or the trials are out of range.</exception>
    public static Rehearsal Book(
        Guid practiceId,
        Guid clientId,
        Guid raceId,
        RehearsalDetails details,
        RaceWeekPlan plan
    )
    {
        var rehearsal = new Rehearsal
        {
            Id = Guid.CreateVersion7(),
            PracticeId = practiceId,
            ClientId = clientId,
            RaceId = raceId,
        };
        rehearsal.Change(details, plan);
        return rehearsal;
    }

    /// <summary>What is to be eaten, sitting by sitting.</summary>
    public ImmutableArray<RehearsedSitting> Sittings() =>
        Details.Part.Sittings(Plan, RunOn, Details.Dose);

    /// <summary>Moves or changes a rehearsal that has not taken place.</summary>
    /// <param name="details">What is to be tried.</param>
    /// <param name="plan">The plan of the version that it takes; null for the one it has.</param>
    /// <exception cref="InvalidOperationException">It is not booked any more.</exception>
    /// <exception cref="ArgumentException">The part, the dose or the trials are out of range.</exception>
    public void Change(RehearsalDetails details, RaceWeekPlan? plan = null)
    {
        ArgumentNullException.ThrowIfNull(details);
        Expect(RehearsalStatus.Booked);
        if (!details.Part.IsValid)
            throw new ArgumentException("The plan has no such days.", nameof(details));
        if (details.Dose is <= 0 or > 1)
            throw new ArgumentException("A dose is above 0 and at most 1.", nameof(details));
        if (
            details.Breakfast
            is { HoursBeforeRun: < 0.5m or > 5 }
                or { CarbohydrateG: < 0 or > 500 }
        )
            throw new ArgumentException("That is no race breakfast.", nameof(details));
        if (
            details.RunFuel
            is { CarbohydrateGPerHour: < 0 or > 120 }
                or { FluidMlPerHour: < 0 or > 1000 }
        )
            throw new ArgumentException("That is no fuelling for a run.", nameof(details));
        (Details, RunOn, Kind, Plan) = (details, details.RunOn, details.Kind, plan ?? Plan);
    }

    /// <summary>Records what the client told; may be told again until it is reviewed.</summary>
    /// <exception cref="InvalidOperationException">It is reviewed or cancelled.</exception>
    /// <exception cref="ArgumentException">A number is out of its range.</exception>
    public void Tell(Feedback feedback)
    {
        ArgumentNullException.ThrowIfNull(feedback);
        Expect(RehearsalStatus.Booked, RehearsalStatus.FedBack);
        if (!feedback.IsPlausible)
            throw new ArgumentException("A number is out of its range.", nameof(feedback));
        (Feedback, Status) = (feedback, RehearsalStatus.FedBack);
    }

    /// <summary>Records the practitioner's verdict; may be revised.</summary>
    /// <exception cref="InvalidOperationException">There is no feedback to review.</exception>
    public void Review(ReviewDecision decision)
    {
        ArgumentNullException.ThrowIfNull(decision);
        Expect(RehearsalStatus.FedBack, RehearsalStatus.Reviewed);
        (Decision, Status) = (decision, RehearsalStatus.Reviewed);
    }

    /// <summary>Records that it did not take place.</summary>
    /// <exception cref="InvalidOperationException">It took place, or is cancelled already.</exception>
    public void Cancel(string because)
    {
        Expect(RehearsalStatus.Booked);
        (CancelledBecause, Status) = (because.Trim(), RehearsalStatus.Cancelled);
    }

    private void Expect(params ReadOnlySpan<RehearsalStatus> allowed)
    {
        if (!allowed.Contains(Status))
            throw new InvalidOperationException($"The rehearsal is {Status}.");
    }
}
