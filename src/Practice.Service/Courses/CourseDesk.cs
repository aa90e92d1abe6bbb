using System.Collections.Immutable;
using Practice.Domain.Course;
using Practice.Service.Plans;

namespace Practice.Service.Courses;

/// <summary>The planner at the course: for a sheet that is not saved yet.</summary>
public sealed class CourseDesk(ICourseScheduler scheduler, Stove stove)
{
    /// <summary>Plans the steps around what is locked.</summary>
    public Task<CourseSchedule> Plan(
        CourseCase course,
        IProgress<CourseSchedule>? progress,
        CancellationToken cancel
    ) => stove.Run(() => scheduler.Schedule(course, progress, cancel));

    /// <summary>Why the plan stays behind its aims.</summary>
    public Task<ImmutableArray<CourseConflict>> Explain(
        CourseCase course,
        CancellationToken cancel
    ) => stove.Run(() => scheduler.Explain(course, cancel));
}
