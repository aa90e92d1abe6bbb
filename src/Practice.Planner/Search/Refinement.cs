using Practice.Planner.Model;

namespace Practice.Planner.Search;

/// <summary>
/// Makes a first menu good: polished twice from the pool; then the good meals met on the way are put together anew, and
/// the outcome is polished once more with them for a pool.
/// </summary>
internal sealed class Refinement(MenuModel model, CancellationToken cancel)
{
    private const int RunsFromThePool = 2;
    private static readonly PolishingPace FromThePool = new(600, 8000);
    private static readonly PolishingPace FromGoodMeals = new(700, 4000);

    private readonly Dictionary<long, Meal>[] _good =
    [
        .. model.Plates.Select(_ => new Dictionary<long, Meal>()),
    ];
    private long[] _best = [];
    private long _bestCost = long.MaxValue;

    /// <summary>The best menu met.</summary>
    /// <param name="pool">Meals for each plate.</param>
    /// <param name="first">One of them for each plate.</param>
    public long[] Of(Meal[][] pool, Meal[] first)
    {
        Remember(MenuBuild.ValuesOf(model, first));
        for (var run = 0; run < RunsFromThePool; run++)
            Polish(pool, first, FromThePool, run);
        Meal[][] good = [.. model.Plates.Select(p => GoodMealsOf(p, first[p.Index]))];
        var together = new Annealing(model, good);
        together.Run(model.Request.Seed, cancel);
        Meal[] picked = [.. together.Picked];
        Remember(MenuBuild.ValuesOf(model, picked));
        Polish(good, picked, FromGoodMeals, RunsFromThePool);
        return _best;
    }

    private void Polish(Meal[][] meals, Meal[] start, PolishingPace pace, int run)
    {
        if (cancel.IsCancellationRequested)
            return;
        var polishing = new Polishing(model, meals, start, model.Request.Seed * 31 + run);
        Remember(polishing.Run(pace, cancel));
        foreach (var plate in model.Plates)
        foreach (var meal in polishing.GoodMealsOf(plate.Index))
            _good[plate.Index].TryAdd(meal.Key, meal);
    }

    // what the plate began with is among them, should nothing better have been met
    private Meal[] GoodMealsOf(Plate plate, Meal first)
    {
        var draw = new MealDraw(model, plate);
        _good[plate.Index].TryAdd(first.Key, first);
        return [.. _good[plate.Index].Values.Select(draw.Priced)];
    }

    private void Remember(long[] values)
    {
        var cost = model.CostOf(values);
        if (cost < _bestCost)
            (_best, _bestCost) = (values, cost);
    }
}
