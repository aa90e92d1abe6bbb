namespace Practice.Planner.Course;

/// <summary>How the course is gone over, window by window.</summary>
/// <param name="Minutes">Length of a window.</param>
/// <param name="Stride">From the beginning of one to that of the next, min.</param>
/// <param name="SolverWork">Deterministic work for each.</param>
internal sealed record WindowPace(double Minutes, double Stride, double SolverWork);

/// <summary>
/// Frees one window of the course after the other, leaves the rest as it is, and lets the constraint solver do its best;
/// again wherever something near it has changed, until no window has a better answer.
/// </summary>
internal sealed class CourseWindows(CourseModel model)
{
    // the longest span that a row of the model looks at
    private const double Reach = 60;

    /// <summary>Goes over the course until nothing is left to mend.</summary>
    /// <param name="pace">How.</param>
    /// <param name="counts">The answer to begin from.</param>
    /// <param name="onBetter">Told of each better answer.</param>
    /// <param name="cancel">Ends it with the best so far.</param>
    public void Run(
        WindowPace pace,
        long[] counts,
        Action<long[]> onBetter,
        CancellationToken cancel
    )
    {
        var cost = model.CostOf(counts);
        var starts = StartsOf(pace);
        var open = starts.ToHashSet();
        while (open.Count > 0)
            foreach (var from in starts.Where(open.Remove))
            {
                if (cancel.IsCancellationRequested)
                    return;
                var free = model.Within(from, from + pace.Minutes);
                var solved = new CourseConstraints(model, counts, free).Solve(
                    pace.SolverWork,
                    cancel
                );
                if (solved is not { Counts: var found } || model.CostOf(found) >= cost)
                    continue;
                open.UnionWith(Touched(starts, from, pace, counts, found));
                (counts, cost) = (found, model.CostOf(found));
                onBetter(counts);
            }
    }

    private List<double> StartsOf(WindowPace pace)
    {
        var last = Math.Max(0, model.Offers.Max(o => o.Minute) - pace.Minutes);
        var starts = new List<double>();
        for (var from = 0.0; from < last + pace.Stride; from += pace.Stride)
            starts.Add(from);
        return starts;
    }

    // windows that look at what has changed; the one that changed it has done its best
    private IEnumerable<double> Touched(
        List<double> starts,
        double by,
        WindowPace pace,
        long[] before,
        long[] after
    )
    {
        var changed = model.Places(_ => true).Where(i => before[i] != after[i]).ToList();
        var (first, last) = (
            changed.Min(i => model.Offers[i].Minute),
            changed.Max(i => model.Offers[i].Minute)
        );
        return starts.Where(s => s != by && first < s + pace.Minutes + Reach && last > s - Reach);
    }
}
