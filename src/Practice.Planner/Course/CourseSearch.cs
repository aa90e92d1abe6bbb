using Practice.Domain.Course;

namespace Practice.Planner.Course;

/// <summary>How hard to look: counted work, never time, so that the same course gives the same schedule.</summary>
/// <param name="Width">Of the widest beams.</param>
/// <param name="Changes">How many changes are tried afterwards, by each of two hands.</param>
internal sealed record CourseEffort(int Width, int Changes)
{
    /// <summary>For an answer that a person waits for.</summary>
    public static CourseEffort Usual { get; } = new(10_000, 2_000_000);
}

/// <summary>
/// One search: a narrow beam for an answer at once; wider ones from the start and from the finish side by side; then
/// changes to the best of them, by two hands with dice of their own. Of equals the first in this order is taken, whichever
/// was ready first.
/// </summary>
internal sealed class CourseSearch(CourseModel model, IProgress<CourseSchedule>? progress)
{
    private const int AtOnce = 100;
    private const int Wider = 4;

    // offers times open rows of a marathon: on a longer course beams are narrower and take as long
    private const double UsualSums = 100 * 200;

    private long[] _counts = new long[model.Offers.Length];
    private long _cost;

    public CourseSchedule Run(CourseEffort effort, CancellationToken cancel)
    {
        if (model.Offers.Length == 0)
            return model.ScheduleOf(_counts, isProven: true);
        // taking nothing breaks no limit: where a beam finds no way through, that is the answer
        _cost = model.CostOf(_counts);
        var start = new CourseBeam(model, fromFinish: false);
        var first = start.Run(AtOnce, _cost, cancel);
        Take(first.Counts);
        progress?.Report(model.ScheduleOf(_counts, first.IsProven));
        if (first.IsProven)
            return model.ScheduleOf(_counts, isProven: true);
        var finish = new CourseBeam(model, fromFinish: true);
        foreach (var step in new[] { effort.Width / Wider, effort.Width })
        {
            var width = (int)Math.Max(AtOnce, step * Math.Min(1, UsualSums / start.Sums));
            var (one, other) = Both(
                () => start.Run(width, _cost, cancel),
                () => finish.Run(width, _cost, cancel)
            );
            Better(one.Counts, other.Counts);
            if (one.IsProven || other.IsProven)
                return model.ScheduleOf(_counts, isProven: true);
        }
        var (left, right) = Both(() => Polished(seed: 1), () => Polished(seed: 2));
        Better(left, right);
        return model.ScheduleOf(_counts);

        long[] Polished(int seed) =>
            new CoursePolish(model, _counts).Run(effort.Changes, seed, cancel);
    }

    private static (T One, T Other) Both<T>(Func<T> one, Func<T> other)
    {
        var (first, second) = (default(T), default(T));
        Parallel.Invoke(() => first = one(), () => second = other());
        return (first!, second!);
    }

    private void Better(params long[]?[] answers)
    {
        var before = _cost;
        foreach (var answer in answers)
            Take(answer);
        if (_cost < before)
            progress?.Report(model.ScheduleOf(_counts));
    }

    private void Take(long[]? counts)
    {
        if (counts is not null && model.CostOf(counts) is var cost && cost < _cost)
            (_counts, _cost) = (counts, cost);
    }
}
