using Practice.Domain.Course;

namespace Practice.Planner.Course;

/// <summary>How long to look: counted work, never time, so that the same course gives the same schedule.</summary>
/// <param name="Shakes">How often a stretch is shaken and made better before the solver sees it.</param>
/// <param name="SolverWork">Deterministic work of the constraint solver on the whole course, at the end.</param>
/// <param name="ShakesBetweenWindows">How often between its narrow windows and its wide ones; null: no windows.</param>
internal sealed record CourseEffort(int Shakes, double SolverWork, int? ShakesBetweenWindows = null)
{
    /// <summary>For an answer that a person waits for.</summary>
    public static CourseEffort Usual { get; } = new(100, 0.05, ShakesBetweenWindows: 300);
}

/// <summary>
/// One search: a beam for an answer at once, small changes to make it better, the constraint solver on windows of the
/// course, narrow ones and wide ones, and on the whole of it at the end: a short course is proven there.
/// </summary>
internal sealed class CourseSearch(CourseModel model, IProgress<CourseSchedule>? progress)
{
    private const int Width = 100;
    private static readonly WindowPace Narrow = new(120, 40, 0.06);
    private static readonly WindowPace Wide = new(150, 30, 0.15);

    private long[] _counts = new long[model.Offers.Length];
    private long _cost = long.MaxValue;

    public CourseSchedule Run(CourseEffort effort, CancellationToken cancel)
    {
        if (model.Offers.Length == 0)
            return model.ScheduleOf(_counts, isProven: true);
        // taking nothing breaks no limit: where the beam finds no way through, that is where the changes begin
        Take(new CourseBeam(model).Run(Width, cancel) ?? _counts);
        Polish(effort.Shakes, seed: 1, cancel);
        if (effort.ShakesBetweenWindows is { } shakes)
        {
            var windows = new CourseWindows(model);
            windows.Run(Narrow, _counts, Take, cancel);
            Polish(shakes, seed: 5, cancel);
            windows.Run(Wide, _counts, Take, cancel);
        }
        if (cancel.IsCancellationRequested)
            return model.ScheduleOf(_counts);
        var solved = new CourseConstraints(model, _counts).Solve(effort.SolverWork, cancel);
        if (solved is { } answer)
            Take(answer.Counts);
        return model.ScheduleOf(_counts, solved?.IsProven ?? false);
    }

    private void Polish(int shakes, int seed, CancellationToken cancel)
    {
        if (!cancel.IsCancellationRequested)
            new CoursePolish(model, _counts).Run(shakes, seed, Take, cancel);
    }

    private void Take(long[] counts)
    {
        var cost = model.CostOf(counts);
        if (cost >= _cost)
            return;
        (_counts, _cost) = ((long[])counts.Clone(), cost);
        progress?.Report(model.ScheduleOf(_counts));
    }
}
