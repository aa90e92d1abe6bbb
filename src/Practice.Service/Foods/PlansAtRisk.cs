using System.Collections.Immutable;
using Practice.Domain.Caseload;
using Practice.Service.Desks;
using Practice.Service.Plans;
using Practice.Service.Races;
using Practice.Store.Plans;
using Practice.Store.Races;

namespace Practice.Service.Foods;

/// <summary>A plan in a client's hands that serves a food she must not have.</summary>
/// <param name="Race">The race ahead.</param>
/// <param name="VersionId">Key of the version she holds.</param>
/// <param name="Why">The food, and why she must not have it.</param>
public sealed record PlanAtRisk(RaceRow Race, Guid VersionId, string Why);

/// <summary>
/// Looks through the issued plans of races ahead for a food: what is learnt late about an allergen stops every draft by
/// itself, but a plan that was handed over has to be taken back by hand.
/// </summary>
public sealed class PlansAtRisk(
    RaceStore races,
    PlanStore plans,
    RaceCases cases,
    PracticeCalendar calendar
)
{
    private const int DaysAhead = 366;

    public async Task<ImmutableArray<PlanAtRisk>> Run(
        Desk desk,
        string foodId,
        CancellationToken cancel
    )
    {
        var found = ImmutableArray.CreateBuilder<PlanAtRisk>();
        var (today, last) = (calendar.Today, calendar.Today.PlusDays(DaysAhead));
        foreach (var race in await races.Between(desk.PracticeId, today, last, cancel))
            if (
                race.LatestPlan is not null
                && await plans.Issued(desk.PracticeId, race.RaceId, cancel) is { } issued
                && IssueChecks.Serves(issued.Plan, foodId)
                && await cases.Open(desk, race.RaceId, cancel) is { } raceCase
                && IssueChecks.WhyUnsafe(foodId, raceCase.Foods) is { } why
            )
                found.Add(new PlanAtRisk(race, issued.Id, why));
        return found.ToImmutable();
    }
}
