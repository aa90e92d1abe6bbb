using System.Collections.Immutable;
using Practice.Domain.Foods;
using Practice.Domain.Plans;
using Practice.Domain.Races;
using Practice.Domain.Rehearsals;

namespace Practice.Service.Rehearsals;

/// <summary>A rehearsal with what speaks against its place, as long as it can still be moved.</summary>
/// <param name="Rehearsal">The rehearsal.</param>
/// <param name="Notes">What speaks against its place; empty once it took place.</param>
public sealed record PlacedRehearsal(Rehearsal Rehearsal, ImmutableArray<PlacementNote> Notes);

/// <summary>The rehearsals of a race, and what the calendar has room for.</summary>
/// <param name="Race">The race.</param>
/// <param name="Rehearsals">Earliest first, cancelled ones left out.</param>
/// <param name="Background">Long-run days, days that do not do, gut history.</param>
/// <param name="Calendar">The calendar that judges every place.</param>
/// <param name="Proposal">What is still to be booked, with why; places that are booked already are not in it.</param>
/// <param name="Version">The plan version that a rehearsal would take; null before there is a plan.</param>
/// <param name="Foods">The practice's foods, for those that gave trouble in the past.</param>
public sealed record RaceRehearsals(
    Race Race,
    ImmutableArray<PlacedRehearsal> Rehearsals,
    RehearsalBackground Background,
    RehearsalCalendar Calendar,
    RehearsalProposal Proposal,
    PlanVersion? Version,
    FoodLibrary Foods
);
