using NodaTime;
using Practice.Domain.Clients;
using Practice.Domain.Plans;
using Practice.Domain.Races;

namespace Practice.Domain.Caseload;

/// <summary>The latest plan version of a race, in brief.</summary>
/// <param name="Id">Key of the version.</param>
/// <param name="Number">1, 2, 3 ... within the race.</param>
/// <param name="Status">Where it stands.</param>
public sealed record PlanMark(Guid Id, int Number, PlanStatus Status);

/// <summary>A race of the caseload, in brief.</summary>
/// <param name="RaceId">Key of the race.</param>
/// <param name="ClientId">Who runs it.</param>
/// <param name="ClientName">The client's full name.</param>
/// <param name="RaceName">Name of the event.</param>
/// <param name="Discipline">Discipline.</param>
/// <param name="DistanceKm">Distance, km.</param>
/// <param name="Start">Start in the race's clock.</param>
/// <param name="ZoneId">IANA key of the race's time zone.</param>
/// <param name="LatestPlan">Its latest plan; null before the first.</param>
public sealed record RaceRow(
    Guid RaceId,
    Guid ClientId,
    string ClientName,
    string RaceName,
    Discipline Discipline,
    decimal DistanceKm,
    LocalDateTime Start,
    string ZoneId,
    PlanMark? LatestPlan
)
{
    /// <summary>The member whose caseload the client is in; null for nobody's.</summary>
    public Guid? ResponsibleId { get; init; }
}

/// <summary>A client of the caseload, in brief.</summary>
/// <param name="ClientId">Key of the client.</param>
/// <param name="GivenName">Given name.</param>
/// <param name="FamilyName">Family name.</param>
/// <param name="Email">Where to write to; may be unknown.</param>
/// <param name="BirthDate">Day of birth.</param>
/// <param name="Units">Kitchen words of the client's papers.</param>
/// <param name="NextRace">The first race from today on; null when none is entered.</param>
public sealed record ClientRow(
    Guid ClientId,
    string GivenName,
    string FamilyName,
    string? Email,
    LocalDate BirthDate,
    Foods.HouseholdUnits Units,
    RaceRow? NextRace
)
{
    /// <summary>Full name.</summary>
    public string Name => $"{GivenName} {FamilyName}".Trim();
}

/// <summary>A plan version in a list, without the plan.</summary>
/// <param name="Id">Key of the version.</param>
/// <param name="RaceId">The race it is for.</param>
/// <param name="Number">1, 2, 3 ... within the race.</param>
/// <param name="Status">Where it stands.</param>
/// <param name="Reason">Why it came to be, or why it was withdrawn.</param>
/// <param name="CreatedAt">When it was begun.</param>
/// <param name="EditedAt">When it was last edited.</param>
/// <param name="IssuedBy">Who issued it.</param>
/// <param name="IssuedAt">When it was issued.</param>
public sealed record PlanVersionRow(
    Guid Id,
    Guid RaceId,
    int Number,
    PlanStatus Status,
    string Reason,
    Instant CreatedAt,
    Instant EditedAt,
    string? IssuedBy,
    Instant? IssuedAt
);
