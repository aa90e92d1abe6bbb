using Practice.Domain.Caseload;
using Practice.Domain.Plans;
using Practice.Service.Desks;
using Practice.Service.Races;
using Practice.Store.Plans;

namespace Practice.Service.Courses;

/// <summary>What became of putting the course into the plan.</summary>
public abstract record PutOutcome;

/// <summary>The draft carries the course as it stands.</summary>
/// <param name="VersionId">Key of the draft.</param>
/// <param name="Number">Its number.</param>
public sealed record PutIn(Guid VersionId, int Number) : PutOutcome;

/// <summary>There is no open draft: build a plan, or begin a new version.</summary>
public sealed record NoOpenDraft : PutOutcome;

/// <summary>No step is planned yet.</summary>
public sealed record NothingPlanned : PutOutcome;

/// <summary>Somebody changed the draft meanwhile.</summary>
public sealed record PutElsewhere : PutOutcome;

/// <summary>Puts the course, as it is on file, into the open draft of the race's plan.</summary>
public sealed class PutCourseInPlan(
    RaceCases cases,
    CoursesInPlans courses,
    PlanStore plans,
    PracticeCalendar calendar
)
{
    public async Task<PutOutcome> Run(Desk desk, Guid raceId, CancellationToken cancel)
    {
        if (
            await cases.Open(desk, raceId, cancel) is not { } raceCase
            || await courses.Of(desk, raceCase, cancel) is not { } course
        )
            return new NothingPlanned();
        if (
            await plans.Latest(desk.PracticeId, raceId, cancel)
            is not { Value.Status: PlanStatus.Draft } draft
        )
            return new NoOpenDraft();
        draft.Value.Edit(draft.Value.Plan with { Course = course }, calendar.Now);
        var note = desk.Note("course-put-in-plan", draft.Value.Id, calendar.Now);
        return await plans.Save(draft, note, cancel) is Saved<PlanVersion> { Now.Value: var now }
            ? new PutIn(now.Id, now.Number)
            : new PutElsewhere();
    }
}
