using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Caseload;
using Practice.Domain.Plans;
using Practice.Domain.Screening;
using Practice.Service.Desks;
using Practice.Service.Screening;
using Practice.Store.Clients;
using Practice.Store.Races;

namespace Practice.Service.Today;

/// <summary>What a line of today's work asks for.</summary>
public enum TodayKind
{
    /// <summary>The race is in the coming days and the plan is still a draft or missing.</summary>
    PlanToIssue,

    /// <summary>A hold blocks the plan of a race that is near.</summary>
    HoldToClear,

    /// <summary>A race in two to five weeks has no plan yet.</summary>
    PlanToBuild,

    /// <summary>The race is within a week and all is issued.</summary>
    RaceThisWeek,

    /// <summary>The race was in the past days.</summary>
    RaceJustRun,
}

/// <summary>One thing that needs doing.</summary>
/// <param name="Kind">What it asks for.</param>
/// <param name="Race">The race it is about.</param>
/// <param name="DaysToGo">Days to the race; negative after it.</param>
/// <param name="Text">What to do, in words.</param>
public sealed record TodayItem(TodayKind Kind, RaceRow Race, int DaysToGo, string Text);

/// <summary>The caseload by what needs doing today, most urgent first.</summary>
public sealed class TodaysWork(
    RaceStore races,
    ClientStore clients,
    CurrentScreening screenings,
    PracticeCalendar calendar
)
{
    private const int IssueWithinDays = 10;
    private const int ThisWeekDays = 7;
    private const int BuildWithinDays = 35;
    private const int JustRunDays = 7;

    public async Task<ImmutableArray<TodayItem>> Run(Desk desk, CancellationToken cancel)
    {
        var today = calendar.Today;
        var near = await races.Between(
            desk.PracticeId,
            today.PlusDays(-JustRunDays),
            today.PlusDays(BuildWithinDays),
            cancel
        );
        var runners = near.Select(r => r.ClientId).ToHashSet();
        var who = await clients.OfSeveral(desk.PracticeId, runners, cancel);
        var screening = await screenings.OfSeveral(desk, runners, cancel);
        return
        [
            .. near.SelectMany(race =>
                    Of(
                        race,
                        Period.DaysBetween(today, race.Start.Date),
                        screening(race.ClientId).StandingHolds(who[race.ClientId], today)
                    )
                )
                .OrderBy(item => item.Kind)
                .ThenBy(item => item.DaysToGo)
                .ThenBy(item => item.Race.ClientName, StringComparer.Ordinal),
        ];
    }

    private static IEnumerable<TodayItem> Of(RaceRow race, int days, ImmutableArray<Hold> holds)
    {
        if (days < 0)
        {
            yield return new TodayItem(TodayKind.RaceJustRun, race, days, "Ask how it went");
            yield break;
        }
        if (!holds.IsEmpty)
            yield return new TodayItem(
                TodayKind.HoldToClear,
                race,
                days,
                string.Join(", ", holds.Select(h => h.Title))
            );
        if (WithThePlan(race, days) is { } item)
            yield return item;
    }

    private static TodayItem? WithThePlan(RaceRow race, int days) =>
        (race.LatestPlan?.Status, days) switch
        {
            (PlanStatus.Issued, <= ThisWeekDays) => new(
                TodayKind.RaceThisWeek,
                race,
                days,
                "Plan is with the client"
            ),
            (PlanStatus.Issued, _) => null,
            (PlanStatus.Draft, <= IssueWithinDays) => new(
                TodayKind.PlanToIssue,
                race,
                days,
                "Check the draft and issue it"
            ),
            (PlanStatus.Draft, _) => null,
            (_, <= IssueWithinDays) => new(
                TodayKind.PlanToIssue,
                race,
                days,
                "Build and issue the plan"
            ),
            _ => new(TodayKind.PlanToBuild, race, days, "Build a first plan"),
        };
}
