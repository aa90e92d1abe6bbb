using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Caseload;
using Practice.Domain.Clients;
using Practice.Domain.Foods;
using Practice.Domain.Plans;
using Practice.Domain.Races;
using Practice.Domain.Screening;
using Practice.Domain.Targets;
using Practice.Service.Desks;
using Practice.Service.Foods;
using Practice.Service.Rehearsals;
using Practice.Service.Screening;
using Practice.Store.Clients;
using Practice.Store.Races;

namespace Practice.Service.Races;

/// <summary>A race, its runner and what the health answers mean for it: what every decision about a plan reads.</summary>
internal sealed record RaceCase(
    Client Client,
    OnFile<Race> Race,
    ScreeningOutcome Screening,
    ImmutableArray<Hold> StandingHolds,
    FoodLibrary Larder,
    LocalDate Today
)
{
    public LoadingTargets Targets(LoadingChoices choices) =>
        LoadingTargets.For(Client, Race.Value, Screening, choices, Today);

    public EligibleFoods Foods =>
        EligibleFoods.For(Larder, Client.Diet, Client.Tastes, Screening.Adjustments);
}

/// <summary>Gathers the case of a race.</summary>
public sealed class RaceCases(
    ClientStore clients,
    RaceStore races,
    CurrentScreening screenings,
    WarningHolds warnings,
    Larder larder,
    PracticeCalendar calendar
)
{
    /// <returns>The case; null when the practice has no such race.</returns>
    internal async Task<RaceCase?> Open(Desk desk, Guid raceId, CancellationToken cancel)
    {
        if (
            await races.Find(desk.PracticeId, raceId, cancel) is not { } race
            || await clients.Find(desk.PracticeId, race.Value.ClientId, cancel) is not { } client
        )
            return null;
        var today = calendar.Today;
        var screening = await screenings.Of(desk, client.Value.Id, cancel);
        var finish = ExpectedFinish(client.Value, race.Value, screening, today);
        return new RaceCase(
            client.Value,
            race,
            screening.Outcome(client.Value, today, finish),
            [
                .. await warnings.Of(desk, client.Value.Id, screening, cancel) is { } hold
                    ? [hold]
                    : ImmutableArray<Hold>.Empty,
                .. screening.StandingHolds(client.Value, today, finish),
            ],
            await larder.Run(desk, cancel),
            today
        );
    }

    /// <summary>The expected finish does not depend on screening; it only decides whether the long-race caution shows.</summary>
    private static Duration? ExpectedFinish(
        Client client,
        Race race,
        ScreeningRecord screening,
        LocalDate today
    ) =>
        LoadingTargets
            .For(client, race, screening.Outcome(client, today), new LoadingChoices(), today)
            .ExpectedFinish.Aim
            is { } minutes
            ? Duration.FromMinutes((double)minutes)
            : null;
}
