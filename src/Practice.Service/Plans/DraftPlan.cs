using System.Collections.Immutable;
using Practice.Domain.Caseload;
using Practice.Domain.Plans;
using Practice.Domain.Plans.Weeks;
using Practice.Domain.Screening;
using Practice.Domain.Targets;
using Practice.Service.Courses;
using Practice.Service.Desks;
using Practice.Service.Races;
using Practice.Service.Weeks;
using Practice.Store.Plans;
using Practice.Store.Practices;

namespace Practice.Service.Plans;

/// <summary>What became of drafting.</summary>
public abstract record DraftOutcome;

/// <summary>A draft is on file.</summary>
/// <param name="VersionId">Key of the version.</param>
/// <param name="Shortfalls">Limits the menu does not keep; empty when it keeps all.</param>
public sealed record Drafted(Guid VersionId, ImmutableArray<Shortfall> Shortfalls) : DraftOutcome;

/// <summary>There is no such race in the practice.</summary>
public sealed record NoSuchRace : DraftOutcome;

/// <summary>A hold forbids even a draft.</summary>
/// <param name="Hold">Which.</param>
public sealed record DraftHeld(Hold Hold) : DraftOutcome;

/// <summary>Somebody changed the draft meanwhile.</summary>
public sealed record DraftedElsewhere : DraftOutcome;

/// <summary>Begins a plan for a race from nothing: targets, days, a first menu.</summary>
public sealed class DraftPlan(
    RaceCases cases,
    PlanStore plans,
    PracticeStore practices,
    IMenuPlanner planner,
    RaceDayMenus raceDay,
    Stove stove,
    PracticeCalendar calendar,
    CoursesInPlans courses
)
{
    /// <summary>
    /// Files the first complete menu, which takes about half a second; the workbench improves it from there. An open
    /// draft of the race is replaced; an issued version stays and the draft becomes the next number.
    /// </summary>
    public async Task<DraftOutcome> Run(
        Desk desk,
        Guid raceId,
        LoadingChoices choices,
        MenuStyle style,
        CancellationToken cancel
    )
    {
        if (await cases.Open(desk, raceId, CancellationToken.None) is not { } raceCase)
            return new NoSuchRace();
        if (raceCase.StandingHolds.FirstOrDefault(h => h.ForbidsDrafting) is { } hold)
            return new DraftHeld(hold);
        var empty = LoadingPlan.Empty(
            raceCase.Client,
            raceCase.Race.Value,
            raceCase.Screening,
            choices,
            style,
            raceCase.Targets(choices)
        ) with
        {
            Note =
                (await practices.Find(desk.PracticeId, CancellationToken.None))?.Value.Defaults.Note
                ?? "",
        };
        var request = MenuRequests.Of(empty, raceCase.Foods, raceCase.Client);
        using var enough = CancellationTokenSource.CreateLinkedTokenSource(cancel);
        var menu = await stove.Run(() =>
            planner.Build(request, new UntilComplete(enough), enough.Token)
        );
        var loading = empty with
        {
            Days = menu.Days,
            Course = await courses.Of(desk, raceCase, CancellationToken.None),
        };
        var plan = await stove.Run(() =>
            raceDay.Fill(WithWeek(loading, raceCase), raceCase.Foods, raceCase.Client, cancel)
        );
        return await File(desk, raceId, plan, menu.Shortfalls);
    }

    private static RaceWeekPlan WithWeek(RaceWeekPlan plan, RaceCase raceCase) =>
        plan with
        {
            Week = WeekLayout.Of(
                plan,
                raceCase.Client,
                raceCase.Race.Value,
                raceCase.Screening.Adjustments,
                raceCase.Today
            ),
        };

    private async Task<DraftOutcome> File(
        Desk desk,
        Guid raceId,
        RaceWeekPlan plan,
        ImmutableArray<Shortfall> shortfalls
    )
    {
        var note = desk.Note("plan-drafted", raceId, calendar.Now);
        var latest = await plans.Latest(desk.PracticeId, raceId, CancellationToken.None);
        if (latest is { Value.Status: PlanStatus.Draft })
        {
            // what a hand wrote into the week survives a plan built anew
            var kept = plan.EditWeek(w => w.Keeping(latest.Value.Plan.Week));
            latest.Value.Edit(kept, calendar.Now);
            return await plans.Save(latest, note, CancellationToken.None) is Saved<PlanVersion>
                ? new Drafted(latest.Value.Id, shortfalls)
                : new DraftedElsewhere();
        }
        var number = (latest?.Value.Number ?? 0) + 1;
        var version = PlanVersion.Draft(
            desk.PracticeId,
            raceId,
            number,
            plan,
            number == 1 ? "First plan" : "Built anew",
            calendar.Now
        );
        return await plans.Add(version, note, CancellationToken.None) is null
            ? new DraftedElsewhere()
            : new Drafted(version.Id, shortfalls);
    }
}
