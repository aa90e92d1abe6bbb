using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Caseload;
using Practice.Domain.Plans;
using Practice.Service.Desks;
using Practice.Store.Practices;
using Practice.Store.Races;

namespace Practice.Service.Demo;

/// <summary>Finds the plans of the demo practice that an earlier run was stopped before it made.</summary>
public sealed class UnfinishedDemo(
    PracticeStore practices,
    RaceStore races,
    PracticeCalendar calendar
)
{
    // some of the demo's races were run last weekend, some are months away
    private static readonly Period Around = Period.FromYears(1);

    /// <summary>Demo clients with the race they are invented with, where it has no plan or half of one.</summary>
    internal async Task<ImmutableArray<DemoPlanOrder>> Orders(CancellationToken cancel)
    {
        if (await Owner(cancel) is not { } desk)
            return [];
        var today = calendar.Today;
        var entered = await races.Between(desk.PracticeId, today - Around, today + Around, cancel);
        return
        [
            .. from demo in DemoCaseload.Clients(today)
            where demo.Plan != DemoPlan.None
            from race in entered
            where !IsMade(race.LatestPlan, demo.Plan)
            where race.RaceName == demo.Race.Name
            where race.ClientName == $"{demo.GivenName} {demo.FamilyName}"
            select new DemoPlanOrder(desk, race.RaceId, demo),
        ];
    }

    // a first draft in the place of an issued plan: that run was stopped while the menu was made
    private static bool IsMade(PlanMark? latest, DemoPlan wanted) =>
        latest is not null
        && !(wanted == DemoPlan.Issued && latest is { Number: 1, Status: PlanStatus.Draft });

    private async Task<Desk?> Owner(CancellationToken cancel)
    {
        foreach (var practice in await practices.All(cancel))
        foreach (var member in await practices.Team(practice, cancel))
            if (member.Email == DemoAccount.Default.Email)
                return new Desk(practice, member.AccountId, member.Name, member.Role);
        return null;
    }
}
