using Practice.Domain.Course;

namespace Practice.Planner.Course;

/// <summary>How long to look: counted work, never time, so that the same course gives the same schedule.</summary>
/// <param name="Shakes">How often a stretch is shaken and made better again.</param>
/// <param name="SolverWork">Deterministic work of the constraint solver.</param>
internal sealed record CourseEffort(int Shakes, double SolverWork)
{
    /// <summary>For an answer that a person waits for.</summary>
    public static CourseEffort Usual { get; } = new(1200, 0.1);
}

/// <summary>One search: a beam for an answer at once, small changes to make it better, the constraint solver at the end.</summary>
internal sealed class CourseSearch(CourseModel model, IProgress<CourseSchedule>? progress)
{
    private const int Width = 100;
    private const int Seed = 1;
    private const double SafetyNetSeconds = 30;

    private long[] _counts = new long[model.Offers.Length];
    private long _cost = long.MaxValue;

    public CourseSchedule Run(CourseEffort effort, CancellationToken cancel)
    {
        if (model.Offers.Length == 0)
            return model.ScheduleOf(_counts, isProven: true);
        // taking nothing breaks no limit: where the beam finds no way through, that is where the changes begin
        Take(new CourseBeam(model).Run(Width, cancel) ?? _counts);
        if (!cancel.IsCancellationRequested)
            new CoursePolish(model, _counts).Run(effort.Shakes, Seed, Take, cancel);
        if (cancel.IsCancellationRequested)
            return model.ScheduleOf(_counts);
        var solved = new CourseConstraints(model, _counts).Solve(
            effort.SolverWork,
            SafetyNetSeconds,
            Take,
            cancel
        );
        if (solved is { } answer)
            Take(answer.Counts);
        return model.ScheduleOf(_counts, solved?.IsProven ?? false);
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
