using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Foods;
using Practice.Domain.Plans;
using Practice.Domain.Practices;
using Practice.Domain.Rehearsals;

namespace Practice.Service.Portal;

/// <summary>The plan the client holds.</summary>
/// <param name="VersionId">Key of the version.</param>
/// <param name="Plan">The plan; without numbers where its reader is to see none.</param>
/// <param name="EditedAt">When the version was last changed.</param>
public sealed record PhonePlan(Guid VersionId, RaceWeekPlan Plan, Instant EditedAt);

/// <summary>
/// What a link opens: all that the phone pages of one race show. Whoever is to see no numbers finds none in its texts.
/// </summary>
public sealed record PhoneFile
{
    /// <summary>Whose face the pages bear.</summary>
    public required PracticeProfile Practice { get; init; }

    /// <summary>Who holds the phone, by the name she is called.</summary>
    public required string GivenName { get; init; }

    /// <summary>Kitchen words.</summary>
    public required HouseholdUnits Units { get; init; }

    /// <summary>Key of the race.</summary>
    public required Guid RaceId { get; init; }

    /// <summary>Name of the race.</summary>
    public required string RaceName { get; init; }

    /// <summary>Start in the race's clock.</summary>
    public required LocalDateTime RaceStart { get; init; }

    /// <summary>The day where the race is.</summary>
    public required LocalDate Today { get; init; }

    /// <summary>The plan that was issued; null while none is out.</summary>
    public required PhonePlan? Plan { get; init; }

    /// <summary>Rehearsals for the race, earliest first, without those cancelled.</summary>
    public required ImmutableArray<Rehearsal> Rehearsals { get; init; }

    /// <summary>Whether the pages show no number with a unit.</summary>
    public required bool IsNumberFree { get; init; }

    /// <summary>Whether body mass may be asked.</summary>
    public required bool MayWeigh { get; init; }
}

/// <summary>A rehearsal as its client logs it.</summary>
/// <param name="Phone">The pages around it.</param>
/// <param name="Rehearsal">The rehearsal.</param>
/// <param name="Details">What was booked, in texts its reader may see.</param>
/// <param name="Sittings">What is to be eaten, in order.</param>
public sealed record PhoneRehearsal(
    PhoneFile Phone,
    Rehearsal Rehearsal,
    RehearsalDetails Details,
    ImmutableArray<RehearsedSitting> Sittings
)
{
    /// <summary>Whether what was told may still be told otherwise.</summary>
    public bool IsOpen => Rehearsal.Status is RehearsalStatus.Booked or RehearsalStatus.FedBack;
}
