using Practice.Planner.Model;

namespace Practice.Planner.Search;

/// <summary>
/// Makes a first menu good. A mixture of meals tells by its prices what the days are short of; meals that are cheap by
/// them are looked for and mixed in, again and again. Then menus are put together from the meals nearest to the mixture
/// and polished, and the good meals met on the way are mixed in, a few times over.
/// </summary>
internal sealed class Refinement(MenuModel model, OnStep onStep, CancellationToken cancel)
{
    // how far along the work is when the first mixture is rich, and when menus of it stand
    private const double Enriched = 0.4;
    private const double StandsAtFirst = 0.6;

    private const int FirstLooks = 60;
    private const int LaterLooks = 10;

    // so many looks that made the mixture cheaper by less than this, and there is not much left to find
    private const int IdleLooks = 6;
    private const double Idle = 0.001;

    // of each plate's pool: the linear solver's time grows with their number
    private const int Kept = 100;

    private const int Moves = 200_000;

    // meals near the mixture differ little in what they cost: from hotter it cools too fast to find the best of them
    private const double Hot = 2500;

    // how many meals a plate: few find the best of them, many leave room
    private static readonly int[] NearestAtFirst = [20, 35, 50, 25];
    private static readonly int[] NearestLater = [30, 50];
    private const int LaterRounds = 3;

    private static readonly PolishingPace Pace = new(300, 2000);

    private readonly Bargains _bargains = new(model, model.Request.Seed);
    private readonly List<Meal>[] _good = [.. model.Plates.Select(_ => new List<Meal>())];
    private long[] _best = [];
    private long _bestCost = long.MaxValue;
    private long _toldCost = long.MaxValue;
    private int _runs;

    /// <summary>The best menu met.</summary>
    /// <param name="pool">Meals for each plate.</param>
    /// <param name="first">One of them for each plate.</param>
    public long[] Of(Meal[][] pool, Meal[] first)
    {
        Remember(MenuBuild.ValuesOf(model, first));
        _toldCost = _bestCost;
        using var all = new Mixture(model);
        foreach (var plate in model.Plates)
        foreach (var meal in pool[plate.Index].Append(first[plate.Index]))
            all.Add(plate.Index, meal);
        if (!all.Mix())
            return _best;
        using var mixture = all.Narrowed(Kept);
        if (!Enrich(mixture, FirstLooks, 0, Enriched))
            return _best;
        PutTogether(mixture, NearestAtFirst);
        const double round = (1 - StandsAtFirst) / LaterRounds;
        for (var done = 0; done < LaterRounds; done++)
        {
            var from = StandsAtFirst + done * round;
            Tell(from);
            foreach (var plate in model.Plates)
            foreach (var meal in _good[plate.Index])
                mixture.Add(plate.Index, meal);
            if (!Enrich(mixture, LaterLooks, from, from + round / 2))
                return _best;
            PutTogether(mixture, NearestLater);
        }
        Tell(1);
        return _best;
    }

    private bool Enrich(Mixture mixture, int looks, double from, double to)
    {
        if (!mixture.Mix())
            return false;
        var costs = new List<double> { mixture.Cost };
        while (costs.Count <= looks && !IsIdle(costs))
        {
            if (cancel.IsCancellationRequested)
                return false;
            _bargains.AddTo(mixture);
            if (!mixture.Mix())
                return false;
            Tell(from + (to - from) * costs.Count / looks);
            costs.Add(mixture.Cost);
        }
        return true;
    }

    private static bool IsIdle(List<double> costs) =>
        costs.Count > IdleLooks && costs[^(IdleLooks + 1)] - costs[^1] < Idle * Math.Abs(costs[^1]);

    // each with luck of its own: it does not matter which is done first
    private void PutTogether(Mixture mixture, int[] nearest)
    {
        if (cancel.IsCancellationRequested)
            return;
        var seed = model.Request.Seed * 31 + _runs;
        _runs += nearest.Length;
        var menus = new Polished[nearest.Length];
        Parallel.For(0, nearest.Length, i => menus[i] = PutTogether(mixture, nearest[i], seed + i));
        foreach (var menu in menus)
        {
            Remember(MenuBuild.ValuesOf(model, menu.Picked));
            Remember(menu.Values);
            foreach (var plate in model.Plates)
                _good[plate.Index].AddRange(menu.GoodMeals[plate.Index]);
        }
    }

    private Polished PutTogether(Mixture mixture, int many, int seed)
    {
        Meal[][] meals =
        [
            .. model.Plates.Select(p => mixture.Nearest(p.Index).Take(many).ToArray()),
        ];
        var annealing = new Annealing(model, meals);
        annealing.Run(Moves, Hot, seed, cancel);
        annealing.DescendByPairs(cancel);
        Meal[] picked = [.. annealing.Picked];
        var polishing = new Polishing(model, meals, picked, seed);
        var values = polishing.Run(Pace, cancel);
        return new Polished(
            picked,
            values,
            [.. picked.Select((meal, plate) => (Meal[])[meal, .. polishing.GoodMealsOf(plate)])]
        );
    }

    private void Tell(double done)
    {
        onStep(done, _bestCost < _toldCost ? _best : null);
        _toldCost = _bestCost;
    }

    private void Remember(long[] values)
    {
        var cost = model.CostOf(values);
        if (cost < _bestCost)
            (_best, _bestCost) = (values, cost);
    }

    /// <summary>A menu put together from meals of a mixture.</summary>
    /// <param name="Picked">Its meals before they were polished.</param>
    /// <param name="Values">The menu polished.</param>
    /// <param name="GoodMeals">For each plate the meals met on the way that were good in their company.</param>
    private sealed record Polished(Meal[] Picked, long[] Values, Meal[][] GoodMeals);
}
