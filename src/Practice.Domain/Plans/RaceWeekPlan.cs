using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Course;
using Practice.Domain.Foods;
using Practice.Domain.Plans.Weeks;
using Practice.Domain.Quantities;
using Practice.Domain.Screening;
using Practice.Domain.Targets;

namespace Practice.Domain.Plans;

/// <summary>Who and what a plan is for, as it stood when planned.</summary>
public sealed record PlanHeader
{
    /// <summary>Full name of the client.</summary>
    public required string ClientName { get; init; }

    /// <summary>Body mass the plan was computed for.</summary>
    public required BodyMass BodyMass { get; init; }

    /// <summary>Name of the race.</summary>
    public required string RaceName { get; init; }

    /// <summary>Place of the race.</summary>
    public string RacePlace { get; init; } = "";

    /// <summary>Distance, km.</summary>
    public required decimal DistanceKm { get; init; }

    /// <summary>Start in the race's clock.</summary>
    public required LocalDateTime RaceStart { get; init; }

    /// <summary>IANA key of the race's time zone.</summary>
    public required string ZoneId { get; init; }
}

/// <summary>Drinking and salting on loading days, in words a client can follow.</summary>
/// <param name="Drinking">How to drink.</param>
/// <param name="Salting">How to salt; null where advice on salt is switched off.</param>
public sealed record FluidAdvice(string Drinking, string? Salting);

/// <summary>
/// The shared plan model. The planner fills it, the workbench edits it by making a new one, the store keeps each
/// version as one document, and screen, phone and paper read it and nothing else.
/// </summary>
public sealed record RaceWeekPlan
{
    /// <summary>Version of this shape in stored documents.</summary>
    public int Shape { get; init; } = 1;

    /// <summary>Who and what for.</summary>
    public required PlanHeader Header { get; init; }

    /// <summary>What the practitioner chose.</summary>
    public required LoadingChoices Choices { get; init; }

    /// <summary>What the plan is held against.</summary>
    public required LoadingTargets Targets { get; init; }

    /// <summary>The days of the loading window, in order.</summary>
    public required ImmutableArray<PlanDay> Days { get; init; }

    /// <summary>Different days or the same again.</summary>
    public MenuStyle Style { get; init; }

    /// <summary>Kitchen words of the reader.</summary>
    public HouseholdUnits Units { get; init; }

    /// <summary>What to take during the race; null until there is a course plan.</summary>
    public CoursePlan? Course { get; init; }

    /// <summary>Drinking and salting.</summary>
    public required FluidAdvice Fluids { get; init; }

    /// <summary>What is said on screen and paper.</summary>
    public required ImmutableArray<Caution> Cautions { get; init; }

    /// <summary>Whether the client's papers show no number with a unit.</summary>
    public bool NumberFree { get; init; }

    /// <summary>Why this plan, in a paragraph for the client.</summary>
    public required string Why { get; init; }

    /// <summary>The practitioner's own words to the client.</summary>
    public string Note { get; init; } = "";

    /// <summary>The rest of the race week; null where it was not laid out yet.</summary>
    public RaceWeek? Week { get; init; }

    /// <summary>Every day with plates: the loading days, race morning, recovery.</summary>
    public IEnumerable<PlanDay> EveryDay =>
        Week is { } week ? Days.Append(week.Morning).Append(week.Recovery) : Days;

    /// <summary>A day of the plan.</summary>
    /// <exception cref="InvalidOperationException">The plan has no such day.</exception>
    public PlanDay this[LocalDate date] => Days.Single(d => d.Date == date);

    /// <summary>The plan with one day replaced.</summary>
    public RaceWeekPlan With(PlanDay day) =>
        this with
        {
            Days = [.. Days.Select(d => d.Date == day.Date ? day : d)],
        };
}
