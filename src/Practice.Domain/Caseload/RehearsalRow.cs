using NodaTime;
using Practice.Domain.Rehearsals;

namespace Practice.Domain.Caseload;

/// <summary>A rehearsal of the caseload, in brief.</summary>
/// <param name="RehearsalId">Key of the rehearsal.</param>
/// <param name="RaceId">The race it is for.</param>
/// <param name="ClientId">Who rehearses.</param>
/// <param name="Kind">How much is tried.</param>
/// <param name="RunOn">Day of the run.</param>
/// <param name="Status">Where it stands.</param>
/// <param name="Warns">Whether the client told of a warning sign.</param>
public sealed record RehearsalRow(
    Guid RehearsalId,
    Guid RaceId,
    Guid ClientId,
    RehearsalKind Kind,
    LocalDate RunOn,
    RehearsalStatus Status,
    bool Warns
);
