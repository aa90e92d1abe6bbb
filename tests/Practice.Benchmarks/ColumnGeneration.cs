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

    public ColumnGeneration(MenuModel model, long[] menu)
    {
        (_model, _menu, _mixture) = (model, menu, new Mixture(model));
        foreach (var (plate, meals) in MealPool.For(model, CancellationToken.None).Index())
        foreach (var meal in meals)
            _mixture.Add(plate, meal);
        foreach (var plate in model.Plates)
            _mixture.Add(plate.Index, MealOn(plate, menu));
    }

    public MixedBound Bound()
    {
        // a quick start: what a search finds need not be found by proof
        var bargains = new Bargains(_model, 1);
        for (var look = 0; look < Looks && _mixture.Mix(); look++)
            bargains.AddTo(_mixture);

        var best = new MixedBound(double.NegativeInfinity, [], [], []);
        var idle = 0;
        (double Floor, double Ceiling)[]? smooth = null;
        for (var round = 0; round < Rounds && idle < IdleRounds && _mixture.Mix(); round++)
        {
            smooth = smooth is null || round < 3 ? [.. _mixture.Prices] : Mixed(smooth);
            var bound = Lagrangian(smooth);
            idle = bound.Value > best.Value ? 0 : idle + 1;
            if (idle == 0)
                best = bound;
            if (_mixture.Cost - best.Value < CloseEnough * Math.Abs(_mixture.Cost))
                break;
        }
        return best;
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
    private MixedBound Lagrangian((double Floor, double Ceiling)[] prices)
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
        return new MixedBound(
            value,
            costs,
            [.. found.Select(f => f.Bound)],
            [.. _model.Plates.Select(p => _mixture.Nearest(p.Index).ToArray())]
        );
    }

    // a meal, and what no meal of the plate costs less than
    private (double Bound, Meal Meal) Price(Plate plate, double[] unscaled)
    {
        var costs = new long[_model.Variables.Count];
        for (var v = plate.FirstVariable; v < plate.FirstVariable + plate.VariableCount; v++)
            costs[v] = (long)Math.Floor(Scale * unscaled[v]);
        var rows = _model
            .Rows.Where(r => r.Plate == plate.Index)
            .Select(r => r.IsHard ? r : r.Priced(Scale * r.Price));
        var pricing = new PartialModel(_model, _menu, [plate.Index], rows, costs, false);
        var answer = Solver.Solve(pricing.Model, Effort.Day, CancellationToken.None);
        var values = answer.Values is null ? _menu : pricing.Merge(answer.Values);
        return (answer.Bound / Scale, MealOn(plate, values));
    }

    public static Meal MealOn(Plate plate, long[] values) =>
        new(
            plate.Patterns.Single(p => values[p.Chosen] == 1),
            [
                .. plate
                    .Candidates.Where(c => values[c.Present] == 1)
                    .Select(c => new Helping(c, (int)values[c.Amount])),
            ],
            0
        );
}

/// <summary>A bound with its proof: whatever a menu costs above it, its meals cost above the least of their plates.</summary>
/// <param name="Value">No menu costs less.</param>
/// <param name="Costs">What one of each variable costs once the rows of several plates are paid for.</param>
/// <param name="LeastOfPlate">No meal of the plate costs less by these.</param>
/// <param name="Met">Meals met on the way.</param>
internal sealed record MixedBound(
    double Value,
    double[] Costs,
    double[] LeastOfPlate,
    Meal[][] Met
);
