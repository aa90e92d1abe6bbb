using Practice.Planner.Model;

namespace Practice.Planner.Search;

/// <summary>
/// Frees one, then two plates at a time (three when nothing else is left) and lets the constraint solver do its best with them while the rest
/// of the menu stands. Ends after a number of solves, never by the clock: the same request gives the same menu.
/// </summary>
internal sealed class Improvement(MenuModel model, long[] start)
{
    private readonly Random _random = new(model.Request.Seed);
    private readonly Dictionary<string, int> _provenAt = [];
    private int _version;

    public long[] Values { get; private set; } = start;
    public long Cost { get; private set; } = model.CostOf(start);

    /// <summary>Enough to see every plate alone once: after polishing more solves bring little for their time.</summary>
    public static int UsualSolves(MenuModel model) => model.Plates.Count;

    /// <summary>Improves for a number of solves.</summary>
    /// <param name="solves">How many.</param>
    /// <param name="onStep">Told after every solve.</param>
    /// <param name="cancel">Ends it with the best so far.</param>
    public void Run(int solves, OnStep onStep, CancellationToken cancel)
    {
        var done = 0;
        while (done < solves && !cancel.IsCancellationRequested)
        {
            var before = done;
            foreach (var plates in Neighbourhoods())
            {
                if (done == solves || cancel.IsCancellationRequested)
                    return;
                if (IsSettled(plates))
                    continue;
                var isBetter = Free(plates, cancel);
                onStep(++done / (double)solves, isBetter ? Values : null);
            }
            if (done == before)
                return;
        }
    }

    // proven best, and nothing has changed since
    private bool IsSettled(int[] plates) =>
        _provenAt.TryGetValue(KeyOf(plates), out var version) && version == _version;

    private bool Free(int[] plates, CancellationToken cancel)
    {
        var partial = new PartialModel(model, Values, plates, leavesOutLastResorts: true);
        var answer = Solver.Solve(partial.Model, Effort.Neighbourhood, cancel);
        if (answer.Values is null)
            return false;
        var values = partial.Merge(answer.Values);
        var cost = model.CostOf(values);
        var isBetter = cost < Cost;
        if (isBetter)
        {
            (Values, Cost) = (values, cost);
            _version++;
        }
        if (answer.IsProven)
            _provenAt[KeyOf(plates)] = _version;
        return isBetter;
    }

    private IEnumerable<int[]> Neighbourhoods()
    {
        var plates = model.Plates.OrderByDescending(p => p.Aim).ThenBy(p => p.Index).ToList();
        foreach (var plate in plates)
            yield return [plate.Index];
        foreach (var pair in Pairs(plates).OrderBy(_ => _random.Next()))
            yield return pair;
        for (var i = 0; i < plates.Count; i++)
            yield return ThreeOfOneDay();
    }

    // two of one day, and the same sitting of two days
    private static IEnumerable<int[]> Pairs(List<Plate> plates) =>
        from one in plates
        from other in plates
        where one.Index < other.Index && (one.Day == other.Day || one.Kind == other.Kind)
        select new[] { one.Index, other.Index };

    private int[] ThreeOfOneDay()
    {
        var day = _random.Next(model.Request.Days.Length);
        return
        [
            .. model
                .PlatesOf(day)
                .Select(p => p.Index)
                .OrderBy(_ => _random.Next())
                .Take(3)
                .Order(),
        ];
    }

    private static string KeyOf(int[] plates) => string.Join(',', plates);
}
