using System.Collections.Immutable;
using Practice.Domain.Course;

namespace Practice.Planner.Course;

/// <summary>
/// Fits feeds and drinks to a course by beams, a narrow one for a first schedule at once, and by small
/// changes to what they find. See <c>docs/course.md</c>. Holds no state: one serves everybody.
/// </summary>
public sealed class CourseScheduler : ICourseScheduler
{
    /// <summary>Takes the slowness out of the first request: called once in the background when the program starts.</summary>
    public void WarmUp(CourseCase course, CancellationToken cancel = default) =>
        Schedule(course, null, cancel);

    /// <inheritdoc />
    public CourseSchedule Schedule(
        CourseCase course,
        IProgress<CourseSchedule>? progress,
        CancellationToken cancel
    )
    {
        ArgumentNullException.ThrowIfNull(course);
        return new CourseSearch(new CourseModel(course), progress).Run(CourseEffort.Usual, cancel);
    }

    /// <inheritdoc />
    public ImmutableArray<CourseConflict> Explain(CourseCase course, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(course);
        return CourseExplanation.Of(course, cancel);
    }
}
