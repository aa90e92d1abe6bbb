using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Caseload;
using Practice.Domain.Plans;
using Practice.Domain.Rehearsals;
using Practice.Domain.Screening;
using Practice.Service.Desks;
using Practice.Service.Rehearsals;
using Practice.Service.Screening;
using Practice.Store.Clients;
using Practice.Store.Debriefs;
using Practice.Store.Races;
using Practice.Store.Rehearsals;

namespace Practice.Service.Today;

/// <summary>What a line of today's work asks for.</summary>
public enum TodayKind
{
    /// <summary>A client told of a warning sign: it comes before everything else.</summary>
    WarningSign,

    /// <summary>The race is in the coming days and the plan is still a draft or missing.</summary>
    PlanToIssue,

    /// <summary>A hold blocks the plan of a race that is near.</summary>
    HoldToClear,

    /// <summary>A client told of a rehearsal, and nobody has decided on it.</summary>
    FeedbackToReview,

    /// <summary>A race in two to five weeks has a plan, and nothing of it was rehearsed or is booked.</summary>
    RehearsalToBook,

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
/// <param name="RehearsalId">The rehearsal it is about; null where it is about none.</param>
public sealed record TodayItem(
    TodayKind Kind,
    RaceRow Race,
    int DaysToGo,
    string Text,
    Guid? RehearsalId = null
);

/// <summary>The caseload by what needs doing today, most urgent first.</summary>
public sealed class TodaysWork(
    RaceStore races,
    ClientStore clients,
    CurrentScreening screenings,
    WarningHolds warnings,
    RehearsalStore rehearsals,
    DebriefStore debriefs,
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
        var rehearsed = (
            await rehearsals.OfRaces(desk.PracticeId, [.. near.Select(r => r.RaceId)], cancel)
        )
            .Select(r => r.RaceId)
            .ToHashSet();
        var told = await Told(desk, cancel);
        var talkedAbout = await debriefs.Among(
            desk.PracticeId,
            [.. near.Where(r => r.Start.Date < today).Select(r => r.RaceId)],
            cancel
        );
        return
        [
            .. near.Where(race => !talkedAbout.Contains(race.RaceId))
                .SelectMany(race =>
                    Of(
                        race,
                        Period.DaysBetween(today, race.Start.Date),
                        screening(race.ClientId).StandingHolds(who[race.ClientId], today),
                        rehearsed.Contains(race.RaceId)
                    )
                )
                .Concat(told)
                .OrderBy(item => item.Kind)
                .ThenBy(item => item.DaysToGo)
                .ThenBy(item => item.Race.ClientName, StringComparer.Ordinal),
        ];
    }

    /// <summary>What clients told of rehearsals and nobody has read yet, and warning signs until they are cleared.</summary>
    private async Task<IEnumerable<TodayItem>> Told(Desk desk, CancellationToken cancel)
    {
        var toRead = await rehearsals.ToRead(desk.PracticeId, cancel);
        var warned = toRead.Where(r => r.Warns).Select(r => r.ClientId).ToHashSet();
        var screening = await screenings.OfSeveral(desk, warned, cancel);
        var hold = await warnings.OfSeveral(desk, warned, screening, cancel);
        var ofRace = (
            await races.OfSeveral(
                desk.PracticeId,
                [.. toRead.Select(r => r.RaceId).Distinct()],
                cancel
            )
        ).ToDictionary(r => r.RaceId);
        return toRead
            .Select(r => (Row: r, Race: ofRace[r.RaceId], Hold: r.Warns ? hold(r.ClientId) : null))
            .Where(r => r.Hold is not null || r.Row.Status == RehearsalStatus.FedBack)
            .Select(r => new TodayItem(
                r.Hold is null ? TodayKind.FeedbackToReview : TodayKind.WarningSign,
                r.Race,
                Period.DaysBetween(calendar.Today, r.Race.Start.Date),
                r.Hold is null
                    ? $"Read the {(r.Row.Kind == RehearsalKind.Full ? "full" : "partial")} rehearsal and decide"
                    : r.Hold.Reason,
                r.Row.RehearsalId
            ));
    }

    private static IEnumerable<TodayItem> Of(
        RaceRow race,
        int days,
        ImmutableArray<Hold> holds,
        bool isRehearsed
    )
    {
        if (days < 0)
        {
            yield return new TodayItem(
                TodayKind.RaceJustRun,
                race,
                days,
                "Ask how it went, and write it down"
            );
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
        var mayRehearse = days >= RehearsalCalendar.Nearest && race.LatestPlan is not null;
        if (mayRehearse && !isRehearsed)
            yield return new TodayItem(
                TodayKind.RehearsalToBook,
                race,
                days,
                "Book a rehearsal of the plan"
            );
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
