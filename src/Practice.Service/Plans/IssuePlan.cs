using System.Collections.Immutable;
using Practice.Domain.Caseload;
using Practice.Domain.Course;
using Practice.Domain.Plans;
using Practice.Domain.Screening;
using Practice.Service.Courses;
using Practice.Service.Desks;
using Practice.Service.Races;
using Practice.Store.Plans;

namespace Practice.Service.Plans;

/// <summary>What became of issuing.</summary>
public abstract record IssueOutcome;

/// <summary>The version is issued and never changes again.</summary>
public sealed record Issued : IssueOutcome;

/// <summary>Holds stand: nothing was issued.</summary>
/// <param name="Holds">What blocks it.</param>
public sealed record HeldBy(ImmutableArray<Hold> Holds) : IssueOutcome;

/// <summary>The plan serves what the client must not have: nothing was issued.</summary>
/// <param name="Foods">What, and why.</param>
public sealed record UnsafeFoods(ImmutableArray<string> Foods) : IssueOutcome;

/// <summary>A sitting has nothing on the plate: nothing was issued.</summary>
public sealed record NothingOnThePlate : IssueOutcome;

/// <summary>Something on the course must not be issued.</summary>
/// <param name="Reasons">What, and why.</param>
public sealed record CourseStopped(ImmutableArray<string> Reasons) : IssueOutcome;

/// <summary>The person may not issue plans.</summary>
public sealed record IssueNotAllowed : IssueOutcome;

/// <summary>The version is not a draft any more, or somebody changed it meanwhile.</summary>
public sealed record IssuedElsewhere : IssueOutcome;

/// <summary>Hands a draft over to the client. Holds and foods are checked once more at this moment.</summary>
public sealed class IssuePlan(
    RaceCases cases,
    PlanStore plans,
    CoursesInPlans courses,
    PracticeCalendar calendar
)
{
    public async Task<IssueOutcome> Run(
        Desk desk,
        OnFile<PlanVersion> version,
        CancellationToken cancel
    )
    {
        if (!desk.MayDecide)
            return new IssueNotAllowed();
        if (
            version.Value.Status != PlanStatus.Draft
            || await cases.Open(desk, version.Value.RaceId, cancel) is not { } raceCase
        )
            return new IssuedElsewhere();
        if (!raceCase.StandingHolds.IsEmpty)
            return new HeldBy(raceCase.StandingHolds);
        if (
            IssueChecks.UnsafeFoods(version.Value.Plan, raceCase.Foods) is
            { IsEmpty: false } unsafeFoods
        )
            return new UnsafeFoods(unsafeFoods);
        if (version.Value.Plan.EveryDay.SelectMany(d => d.Occasions).Any(o => o.Portions.IsEmpty))
            return new NothingOnThePlate();
        var course = version.Value.Plan.Course is { } planned
            ? await courses.Again(desk, raceCase, planned, cancel)
            : null;
        if (course is { IsStopped: true })
            return new CourseStopped([
                .. course.Warnings.Where(w => w.Weight == WarningWeight.Stop).Select(w => w.Text),
            ]);
        version.Value.Edit(version.Value.Plan with { Course = course }, calendar.Now);
        return await Issue(desk, version, raceCase, cancel);
    }

    private async Task<IssueOutcome> Issue(
        Desk desk,
        OnFile<PlanVersion> version,
        RaceCase raceCase,
        CancellationToken cancel
    )
    {
        // what the client reads is what screening says today, not on the day the draft was begun
        version.Value.Edit(IssueChecks.UpToDate(version.Value.Plan, raceCase), calendar.Now);
        version.Value.Issue(desk.Name, calendar.Now);
        var note = desk.Note("plan-issued", version.Value.Id, calendar.Now);
        if (await plans.Save(version, note, cancel) is not Saved<PlanVersion>)
            return new IssuedElsewhere();
        await WithdrawEarlier(desk, version.Value, cancel);
        return new Issued();
    }

    private async Task WithdrawEarlier(Desk desk, PlanVersion issued, CancellationToken cancel)
    {
        var earlier = (await plans.Versions(desk.PracticeId, issued.RaceId, cancel)).Where(v =>
            v.Status == PlanStatus.Issued && v.Number < issued.Number
        );
        foreach (var row in earlier)
        {
            if (await plans.Find(desk.PracticeId, row.Id, cancel) is not { } old)
                continue;
            old.Value.Withdraw($"Replaced by version {issued.Number}");
            await plans.Withdraw(old, desk.Note("plan-withdrawn", row.Id, calendar.Now), cancel);
        }
    }
}
