using Practice.Domain.Clients;
using Practice.Domain.Races;
using Practice.Domain.Screening;
using Practice.Domain.Targets;

namespace Practice.Domain.Plans;

/// <summary>Begins the loading plan of a race.</summary>
public static class LoadingPlan
{
    /// <summary>The plan with days and sittings laid out and nothing on the plates.</summary>
    /// <exception cref="ArgumentException">The client was never weighed.</exception>
    public static RaceWeekPlan Empty(
        Client client,
        Race race,
        ScreeningOutcome screening,
        LoadingChoices choices,
        MenuStyle style,
        LoadingTargets targets
    )
    {
        ArgumentNullException.ThrowIfNull(client);
        ArgumentNullException.ThrowIfNull(race);
        ArgumentNullException.ThrowIfNull(screening);
        var mass =
            client.LatestMass?.Mass
            ?? throw new ArgumentException(
                "A plan needs a body mass: weigh the client first.",
                nameof(client)
            );
        var header = new PlanHeader
        {
            ClientName = client.Name,
            BodyMass = mass,
            RaceName = race.Name,
            RacePlace = race.Place,
            DistanceKm = race.DistanceKm,
            RaceStart = race.Start,
            ZoneId = race.ZoneId,
        };
        return new RaceWeekPlan
        {
            Header = header,
            Choices = choices,
            Targets = targets,
            Days = LoadingLayout.Days(race.Start, mass, choices, targets, screening.Adjustments),
            Style = style,
            Units = client.Units,
            Fluids = PlanAdvice.Fluids(screening.Adjustments),
            Cautions = screening.Cautions,
            NumberFree = screening.Adjustments.NumberFree,
            Why = PlanAdvice.Why(header, targets, screening.Adjustments),
        };
    }
}
