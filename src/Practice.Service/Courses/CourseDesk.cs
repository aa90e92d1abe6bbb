using System.Collections.Immutable;
using Practice.Domain.Course;
using Practice.Service.Plans;

namespace Practice.Service.Courses;

/// <summary>The planner at the course: for a sheet that is not saved yet.</summary>
public sealed class CourseDesk(ICourseScheduler scheduler, Stove stove)
{
    /// <summary>
    /// Plans the steps around what is locked. While a hold forbids even a draft nothing is planned: the tool cannot check
    /// what the client must not have.
    /// </summary>
    public Task<CourseSchedule> Plan(
        CourseFile file,
        CourseSheet sheet,
        IProgress<CourseSchedule>? progress,
        CancellationToken cancel
    )
    {
        ArgumentNullException.ThrowIfNull(file);
        ArgumentNullException.ThrowIfNull(sheet);
        return file.ForbidsPlanning is null
            ? stove.Run(() => scheduler.Schedule(file.CaseOf(sheet), progress, cancel))
            : Task.FromResult(new CourseSchedule(sheet.Steps, double.PositiveInfinity, false));
    }

    /// <summary>Why the plan stays behind its aims.</summary>
    public Task<ImmutableArray<CourseConflict>> Explain(
        CourseCase course,
        CancellationToken cancel
    ) => stove.Run(() => scheduler.Explain(course, cancel));
}
