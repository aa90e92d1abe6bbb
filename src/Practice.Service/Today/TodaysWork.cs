using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Caseload;
using Practice.Domain.Plans;
using Practice.Service.Desks;
using Practice.Service.Races;
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
public sealed class TodaysWork(RaceStore races, RaceCases cases, PracticeCalendar calendar)
{
    private const int IssueWithinDays = 10;
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
        var items = new List<TodayItem>();
        foreach (var race in near)
            items.AddRange(
                await Of(desk, race, Period.DaysBetween(today, race.Start.Date), cancel)
            );
        return
        [
            .. items.OrderBy(i => i.Kind).ThenBy(i => i.DaysToGo).ThenBy(i => i.Race.ClientName),
        ];
    }

    private async Task<IEnumerable<TodayItem>> Of(
        Desk desk,
        RaceRow race,
        int days,
        CancellationToken cancel
    )
    {
        if (days < 0)
            return [new TodayItem(TodayKind.RaceJustRun, race, days, "Ask how it went")];
        var items = new List<TodayItem>();
        var raceCase = await cases.Open(desk, race.RaceId, cancel);
        if (raceCase is { StandingHolds: { IsEmpty: false } holds })
            items.Add(
                new TodayItem(
                    TodayKind.HoldToClear,
                    race,
                    days,
                    string.Join(", ", holds.Select(h => h.Title))
                )
            );
        items.AddRange(
            race.LatestPlan?.Status switch
            {
                PlanStatus.Issued when days <= 7 =>
                [
                    new TodayItem(TodayKind.RaceThisWeek, race, days, "Plan is with the client"),
                ],
                PlanStatus.Issued => [],
                PlanStatus.Draft when days <= IssueWithinDays =>
                [
                    new TodayItem(
                        TodayKind.PlanToIssue,
                        race,
                        days,
                        "Check the draft and issue it"
                    ),
                ],
                _ when days <= IssueWithinDays =>
                [
                    new TodayItem(TodayKind.PlanToIssue, race, days, "Build and issue the plan"),
                ],
                PlanStatus.Draft => [],
                _ => [new TodayItem(TodayKind.PlanToBuild, race, days, "Build a first plan")],
            }
        );
        return items;
    }
}
