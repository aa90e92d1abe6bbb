using Practice.Planner.Model;

namespace Practice.Planner.Search;

/// <summary>
/// Looks for meals that are cheap by the prices of a mixture: single foods are moved about on the meals nearest to it and
/// on freshly drawn ones, each plate by itself. What is found makes the next mixture cheaper.
/// </summary>
internal sealed class Bargains
{
    private const int StartsNearest = 3;

    // the nearest alone are much alike, and so is what is found from them
    private const int StartsElsewhere = 3;
    private const int Elsewhere = 100;

    private const int StartsDrawn = 5;
    private const int Draws = 80;

    private const long BrokenSense = 20_000;
    private static readonly Cooling OnAMeal = new(2000, 2000, 30, long.MaxValue / 8);

    private readonly MenuModel _model;
    private readonly MealDraw[] _draws;

    // each plate has its own luck, so that it does not matter which is looked at first
    private readonly Random[] _random;

    public Bargains(MenuModel model, int seed)
    {
        _model = model;
        _draws = [.. model.Plates.Select(p => new MealDraw(model, p))];
        _random = [.. model.Plates.Select(p => new Random(seed * 1000 + p.Index))];
    }

    /// <summary>Looks once on every plate and puts what was found into the mixture.</summary>
    /// <param name="mixture">A mixture with prices.</param>
    public void AddTo(Mixture mixture)
    {
        long[] costs = [.. mixture.CostsAt(mixture.Prices).Select(c => (long)Math.Round(c))];
        var found = new Meal[_model.Plates.Count][];
        Parallel.ForEach(
            _model.Plates,
            plate => found[plate.Index] = FoundOn(plate, [.. mixture.Nearest(plate.Index)], costs)
        );
        foreach (var (plate, meals) in found.Index())
        foreach (var meal in meals)
            mixture.Add(plate, meal);
    }

    private Meal[] FoundOn(Plate plate, IReadOnlyList<Meal> nearest, long[] costs)
    {
        var random = _random[plate.Index];
        var score = Score.OfPlate(_model, plate, BrokenSense, costs);
        var table = new Table(_model, score, plate, nearest[0]);
        var settling = new Settling(_model, table, _model.Costs, random);
        IEnumerable<Meal> starts =
        [
            .. Enumerable
                .Range(0, StartsNearest)
                .Select(i => nearest[Math.Min(i, nearest.Count - 1)]),
            .. Enumerable
                .Range(0, StartsElsewhere)
                .Select(_ => nearest[random.Next(Math.Min(Elsewhere, nearest.Count))]),
            .. Drawn(plate, costs, table),
        ];
        return [.. starts.Select(meal => BetterThan(meal, plate.Index, table, settling))];
    }

    // the cheapest of each pattern: moving foods about never changes the pattern of a meal
    private IEnumerable<Meal> Drawn(Plate plate, long[] costs, Table table)
    {
        var charges = new long[plate.VariableCount];
        for (var v = 0; v < charges.Length; v++)
            charges[v] = costs[plate.FirstVariable + v] - _model.Costs[plate.FirstVariable + v];
        return Enumerable
            .Range(0, Draws)
            .Select(_ => _draws[plate.Index].Next(charges, _random[plate.Index]))
            .OfType<Meal>()
            .Select(meal => (Meal: meal, Cost: CostOf(meal)))
            .GroupBy(m => m.Meal.Pattern)
            .Select(alike => alike.MinBy(m => m.Cost))
            .OrderBy(m => m.Cost)
            .Take(StartsDrawn)
            .Select(m => m.Meal);

        long CostOf(Meal meal)
        {
            table.Lay(plate.Index, meal);
            table.Keep();
            return table.Cost;
        }
    }

    private static Meal BetterThan(Meal meal, int plate, Table table, Settling settling)
    {
        table.Lay(plate, meal);
        var (best, bestCost) = (meal, table.Cost);
        settling.Run(plate, [plate], table.Cost, OnAMeal, Look);
        table.Keep();
        return best;

        void Look()
        {
            if (table.MakesSense && table.Cost < bestCost)
                (best, bestCost) = (table.MealOn(plate), table.Cost);
        }
    }
}
