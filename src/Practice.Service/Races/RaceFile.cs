using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Caseload;
using Practice.Domain.Clients;
using Practice.Domain.Races;
using Practice.Domain.Screening;
using Practice.Domain.Targets;

namespace Practice.Service.Races;

/// <summary>A race with what it asks of its runner.</summary>
/// <param name="Client">Who runs it.</param>
/// <param name="Race">The race, with the version it was read at.</param>
/// <param name="Choices">What the targets were computed from.</param>
/// <param name="Targets">What a plan is held against.</param>
/// <param name="Screening">What the health answers mean.</param>
/// <param name="StandingHolds">Holds that block issuing today.</param>
/// <param name="Versions">Plan versions, newest first.</param>
/// <param name="Today">The day on which all this holds.</param>
public sealed record RaceFile(
    Client Client,
    OnFile<Race> Race,
    LoadingChoices Choices,
    LoadingTargets Targets,
    ScreeningOutcome Screening,
    ImmutableArray<Hold> StandingHolds,
    ImmutableArray<PlanVersionRow> Versions,
    LocalDate Today
);
