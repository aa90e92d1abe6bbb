using System.Collections.Immutable;

namespace Practice.Domain.Course;

/// <summary>Steps for a course, and how good they are.</summary>
/// <param name="Steps">The steps, locked ones as they were.</param>
/// <param name="Cost">The planner's own penalty: lower is better.</param>
/// <param name="IsProven">Whether nothing cheaper exists.</param>
public sealed record CourseSchedule(ImmutableArray<CourseStep> Steps, double Cost, bool IsProven);

/// <summary>Why a wish of the course is not met, and what would help.</summary>
/// <param name="Rule">What stands in the way.</param>
/// <param name="Text">In words, with what it would bring.</param>
public sealed record CourseConflict(CourseRule Rule, string Text);

/// <summary>Fits feeds and drinks to stations, products and gut. It decides places, never what a client may have.</summary>
public interface ICourseScheduler
{
    /// <summary>
    /// Fills the course around locked steps. The first complete schedule is reported within about a tenth of a second
    /// and improves from there; cancelling returns the best so far. Deterministic for the same case.
    /// </summary>
    CourseSchedule Schedule(
        CourseCase course,
        IProgress<CourseSchedule>? progress,
        CancellationToken cancel
    );

    /// <summary>Why carbohydrate or drinking stay behind their targets; empty when they do not.</summary>
    ImmutableArray<CourseConflict> Explain(CourseCase course, CancellationToken cancel);
}
