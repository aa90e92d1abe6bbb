using Practice.Planner.Model;
using Practice.Planner.Search;

namespace Practice.Benchmarks;

/// <summary>
/// What no menu can cost less than (Dantzig and Wolfe 1960; from memory): a linear programme mixes whole meals, and for
/// each plate the exact model looks for a meal that would make the mixture cheaper, until none does. The bound is the
/// Lagrangian one, so it holds at every step, whether each plate was priced to the end or only to what the solver proves.
/// </summary>
internal sealed class ColumnGeneration : IDisposable
{
    private const int Looks = 60;
    private const int Rounds = 80;
    private const double CloseEnough = 0.005;

    // so many rounds that raised the bound by nothing: plates that cannot be priced to proof keep it where it is
    private const int IdleRounds = 6;

    // whole-number prices in tenths keep the rounding of the duals below a thousandth of a menu's cost
    private const int Scale = 10;

    private readonly MenuModel _model;
    private readonly long[] _menu;
    private readonly Mixture _mixture;
    private Proof _best = new(double.NegativeInfinity, [], []);

    public ColumnGeneration(MenuModel model, long[] menu)
    {
        (_model, _menu, _mixture) = (model, menu, new Mixture(model));
        foreach (var (plate, meals) in MealPool.For(model, CancellationToken.None).Index())
        foreach (var meal in meals)
            _mixture.Add(plate, meal);
        foreach (var plate in model.Plates)
            _mixture.Add(plate.Index, MealOn(plate, v => menu[v]));
    }

    /// <summary>What no menu costs less than, not even one that mixes meals.</summary>
    public double Bound()
    {
        // a quick start: what a search finds need not be found by proof
        var bargains = new Bargains(_model, 1);
        for (var look = 0; look < Looks && _mixture.Mix(); look++)
            bargains.AddTo(_mixture);

        var idle = 0;
        (double Floor, double Ceiling)[]? smooth = null;
        for (var round = 0; round < Rounds && idle < IdleRounds && _mixture.Mix(); round++)
        {
            smooth = smooth is null || round < 3 ? [.. _mixture.Prices] : Mixed(smooth);
            var proof = Lagrangian(smooth);
            idle = proof.Bound > _best.Bound ? 0 : idle + 1;
            if (idle == 0)
                _best = proof;
            if (_mixture.Cost - _best.Bound < CloseEnough * Math.Abs(_mixture.Cost))
                break;
        }
        return _best.Bound;
    }

    /// <summary>
    /// What no menu costs less than, mixtures left out: a menu no dearer than the known one has only meals that, by the
    /// prices of the bound, are dearer than the cheapest of their plate by no more than the gap. They are all found, and
    /// the best menu of them is sought by branch and bound. The known menu's cost when nothing is better.
    /// </summary>
    /// <returns>The bound; null when there are too many such meals.</returns>
    public double? BoundOfWholeMeals()
    {
        var known = _model.CostOf(_menu);
        var costs = Scaled(_best.Costs);
        var meals = new List<Meal>?[_model.Plates.Count];
        Parallel.ForEach(
            _model.Plates,
            plate =>
            {
                var ceiling = known - _best.Bound + _best.CheapestOf[plate.Index];
                meals[plate.Index] = new Enumeration(
                    _model,
                    plate,
                    costs,
                    Scale,
                    (long)Math.Ceiling(Scale * ceiling)
                ).All();
            }
        );
        if (meals.Contains(null))
            return null;
        Meal[][] priced =
        [
            .. _model.Plates.Select(plate =>
            {
                var draw = new MealDraw(_model, plate);
                return meals[plate.Index]!.Select(draw.Priced).ToArray();
            }),
        ];
        var bound = BestOfMeals.Bound(
            _model,
            priced,
            [.. _model.Plates.Select(p => MealOn(p, v => _menu[v]))]
        );
        return Math.Clamp(bound, _best.Bound, known);
    }

    public void Dispose() => _mixture.Dispose();

    private (double, double)[] Mixed((double Floor, double Ceiling)[] smooth) =>
        [
            .. smooth.Zip(
                _mixture.Prices,
                (a, b) => (0.6 * a.Floor + 0.4 * b.Floor, 0.6 * a.Ceiling + 0.4 * b.Ceiling)
            ),
        ];

    // what the cheapest meals cost once the shared rows are paid for by their prices
    private Proof Lagrangian((double Floor, double Ceiling)[] prices)
    {
        var value = 0.0;
        for (var r = 0; r < prices.Length; r++)
        {
            var row = _mixture.SharedRows[r];
            prices[r] = (Math.Max(0, prices[r].Floor), Math.Min(0, prices[r].Ceiling));
            if (row.Low > -Row.Unbounded)
                value += prices[r].Floor * row.Low;
            if (row.High < Row.Unbounded)
                value += prices[r].Ceiling * row.High;
        }
        var costs = _mixture.CostsAt(prices);
        var found = new (double Bound, Meal Meal)[_model.Plates.Count];
        Parallel.ForEach(_model.Plates, plate => found[plate.Index] = Price(plate, costs));
        foreach (var (plate, (bound, meal)) in found.Index())
        {
            value += bound;
            _mixture.Add(plate, meal);
        }
        return new Proof(value, costs, [.. found.Select(f => f.Bound)]);
    }

    // a meal, and what no meal of the plate costs less than
    private (double Bound, Meal Meal) Price(Plate plate, double[] unscaled)
    {
        var costs = Scaled(unscaled);
        var rows = _model
            .Rows.Where(r => r.Plate == plate.Index)
            .Select(r => r.IsHard ? r : r.Priced(Scale * r.Price));
        var pricing = new PartialModel(_model, _menu, [plate.Index], rows, costs, false);
        var answer = Solver.Solve(pricing.Model, Effort.Day, CancellationToken.None);
        var values = answer.Values is null ? _menu : pricing.Merge(answer.Values);
        return (answer.Bound / Scale, MealOn(plate, v => values[v]));
    }

    // rounded down: a bound by them holds
    private static long[] Scaled(double[] costs) =>
        [.. costs.Select(c => (long)Math.Floor(Scale * c))];

    /// <summary>The meal that a solution lays on a plate, without its price.</summary>
    internal static Meal MealOn(Plate plate, Func<int, long> value) =>
        new(
            plate.Patterns.Single(p => value(p.Chosen) == 1),
            [
                .. plate
                    .Candidates.Where(c => value(c.Present) == 1)
                    .Select(c => new Helping(c, (int)value(c.Amount))),
            ],
            0
        );

    /// <summary>A bound and where it comes from.</summary>
    /// <param name="Bound">No menu costs less.</param>
    /// <param name="Costs">What each variable costs by its prices.</param>
    /// <param name="CheapestOf">For each plate, what no meal costs less than by them.</param>
    private sealed record Proof(double Bound, double[] Costs, double[] CheapestOf);
}
