using System.Collections.Immutable;
using Practice.Domain.Caseload;
using Practice.Domain.Clients;
using Practice.Domain.Plans;
using Practice.Domain.Races;
using Practice.Domain.Screening;

namespace Practice.Service.Plans;

/// <summary>A plan version on the workbench, with what it must respect.</summary>
/// <param name="Version">The version, with the state it was read at.</param>
/// <param name="Client">Who it is for.</param>
/// <param name="Race">The race it leads to.</param>
/// <param name="Screening">What the health answers mean today.</param>
/// <param name="StandingHolds">Holds that block issuing today.</param>
/// <param name="Foods">What the client may be served today.</param>
public sealed record PlanFile(
    OnFile<PlanVersion> Version,
    Client Client,
    Race Race,
    ScreeningOutcome Screening,
    ImmutableArray<Hold> StandingHolds,
    EligibleFoods Foods
)
{
    /// <summary>What the planner is asked for a plan in its present state.</summary>
    public MenuRequest RequestFor(RaceWeekPlan plan) => MenuRequests.Of(plan, Foods, Client);
}
