using System.Collections.Immutable;
using Practice.Domain.Caseload;
using Practice.Domain.Clients;
using Practice.Domain.Debriefs;
using Practice.Domain.Foods;
using Practice.Domain.Screening;

namespace Practice.Service.Clients;

/// <summary>All that is on file about a client, as one page shows it.</summary>
/// <param name="Client">The client, with the version it was read at.</param>
/// <param name="Races">Races, earliest first.</param>
/// <param name="Screening">Answers and clearances; without an answer before the first screening.</param>
/// <param name="Outcome">What the answers mean today.</param>
/// <param name="StandingHolds">Holds that nothing lifts today.</param>
/// <param name="Warning">The one of them that a warning sign in a rehearsal raised; null without.</param>
/// <param name="Foods">The practice's foods, to like and to refuse.</param>
public sealed record ClientFile(
    OnFile<Client> Client,
    ImmutableArray<RaceRow> Races,
    ScreeningRecord Screening,
    ScreeningOutcome Outcome,
    ImmutableArray<Hold> StandingHolds,
    Hold? Warning,
    FoodLibrary Foods
)
{
    /// <summary>What was learned from races already run.</summary>
    public ImmutableArray<Debrief> Debriefs { get; init; } = [];
}
