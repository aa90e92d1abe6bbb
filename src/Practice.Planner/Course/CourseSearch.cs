using Practice.Domain.Course;

namespace Practice.Planner.Course;

/// <summary>One search: a narrow beam for an answer at once, a wider one, then the constraint solver from there.</summary>
internal sealed class CourseSearch(CourseModel model, IProgress<CourseSchedule>? progress)
{
    private const int Narrow = 100;
    private const int Wide = 400;
    private const double SafetyNetSeconds = 30;

    /// <summary>Deterministic work of the solver for an answer that a person waits for.</summary>
    public const double UsualWork = 3;

    private long[] _counts = new long[model.Offers.Length];
    private long _cost = long.MaxValue;

    public CourseSchedule Run(double work, CancellationToken cancel)
    {
        Take(_counts);
        if (model.Offers.Length == 0)
            return model.ScheduleOf(_counts, isProven: true);
        var beam = new CourseBeam(model);
        foreach (var width in (int[])[Narrow, Wide])
            if (beam.Run(width, cancel) is { } counts)
                Take(counts);
        var whole = new CourseConstraints(model, _counts);
        var found = whole.Solve(work, SafetyNetSeconds, Take, cancel);
        if (found is { } answer)
            Take(answer.Counts);
        return model.ScheduleOf(_counts, found?.IsProven ?? false);
    }

    private void Take(long[] counts)
    {
        var cost = model.CostOf(counts);
        if (cost >= _cost)
            return;
        var isFirst = _cost == long.MaxValue;
        (_counts, _cost) = ((long[])counts.Clone(), cost);
        // nothing taken at all is where the search begins, and nobody's schedule
        if (!isFirst)
            progress?.Report(model.ScheduleOf(_counts));
    }
}
