using Google.OrTools.LinearSolver;
using Practice.Planner.Model;
using Practice.Planner.Search;

namespace Practice.Benchmarks;

/// <summary>
/// What no menu can cost less than (Dantzig and Wolfe 1960; from memory): a linear programme mixes whole meals, and for
/// each plate the exact model looks for a meal that would make the mixture cheaper, until none does. The bound is the
/// Lagrangian one, so it holds at every step; each plate must be priced to proof for it to count.
/// </summary>
internal sealed class ColumnGeneration
{
    private const int Rounds = 80;
    private const double CloseEnough = 0.005;

    // whole-number prices in tenths keep the rounding of the duals below a thousandth of a menu's cost
    private const int Scale = 10;

    private readonly MenuModel _model;
    private readonly long[] _menu;
    private readonly Row[] _shared;
    private readonly List<(int Row, long Coefficient)>[] _touches;
    private readonly Google.OrTools.LinearSolver.Solver _master;
    private readonly Constraint?[] _atLeast;
    private readonly Constraint?[] _atMost;
    private readonly Constraint[] _oneMeal;
    private readonly HashSet<string> _known = [];

    public ColumnGeneration(MenuModel model, long[] menu)
    {
        (_model, _menu) = (model, menu);
        _shared = [.. model.Rows.Where(r => r.Plate < 0)];
        _touches = [.. model.Variables.Select(_ => new List<(int, long)>())];
        for (var r = 0; r < _shared.Length; r++)
        for (var i = 0; i < _shared[r].Variables.Length; i++)
            _touches[_shared[r].Variables[i]].Add((r, _shared[r].Coefficients[i]));

        _master = Google.OrTools.LinearSolver.Solver.CreateSolver("GLOP");
        _master.Objective().SetMinimization();
        _oneMeal = [.. model.Plates.Select(_ => _master.MakeConstraint(1, 1))];
        _atLeast = new Constraint?[_shared.Length];
        _atMost = new Constraint?[_shared.Length];
        for (var r = 0; r < _shared.Length; r++)
            AddSharedRow(r);
        foreach (var meal in MealPool.For(model, CancellationToken.None).SelectMany(m => m))
            AddMeal(
                model.Variables[meal.Pattern.Chosen].Plate,
                meal.Values.ToDictionary(v => v.Variable, v => v.Value)
            );
        foreach (var plate in model.Plates)
            AddMeal(plate.Index, Nonzero(plate, menu));
    }

    public double Bound()
    {
        var best = double.NegativeInfinity;
        double[]? smooth = null;
        for (var round = 0; round < Rounds; round++)
        {
            if (_master.Solve() != Google.OrTools.LinearSolver.Solver.ResultStatus.OPTIMAL)
                break;
            var mixture = _master.Objective().Value();
            var (low, high) = (Duals(_atLeast), Duals(_atMost));
            var duals = low.Concat(high).ToArray();
            smooth = smooth is null || round < 3 ? duals : Mixed(smooth, duals);
            best = Math.Max(best, Lagrangian(smooth[..low.Length], smooth[low.Length..]));
            if (mixture - best < CloseEnough * Math.Abs(mixture))
                break;
        }
        return best;
    }

    private static double[] Mixed(double[] one, double[] other) =>
        [.. one.Zip(other, (a, b) => 0.6 * a + 0.4 * b)];

    private static double[] Duals(Constraint?[] constraints) =>
        [.. constraints.Select(c => c?.DualValue() ?? 0)];

    // what the cheapest meals cost once the shared rows are paid for by their prices
    private double Lagrangian(double[] low, double[] high)
    {
        var value = 0.0;
        for (var r = 0; r < _shared.Length; r++)
        {
            low[r] = Math.Max(0, low[r]);
            high[r] = Math.Min(0, high[r]);
            if (_atLeast[r] is not null)
                value += low[r] * _shared[r].Low;
            if (_atMost[r] is not null)
                value += high[r] * _shared[r].High;
        }
        foreach (var plate in _model.Plates)
            value += Price(plate, low, high) ?? double.NegativeInfinity;
        return value;
    }

    private double? Price(Plate plate, double[] low, double[] high)
    {
        var costs = new long[_model.Variables.Count];
        for (var v = plate.FirstVariable; v < plate.FirstVariable + plate.VariableCount; v++)
            costs[v] = (long)
                Math.Floor(
                    Scale
                        * (
                            _model.Costs[v]
                            - _touches[v].Sum(t => (low[t.Row] + high[t.Row]) * t.Coefficient)
                        )
                );
        var rows = _model
            .Rows.Where(r => r.Plate == plate.Index)
            .Select(r => r.IsHard ? r : r.Priced(Scale * r.Price));
        var pricing = new PartialModel(_model, _menu, [plate.Index], rows, costs, false);
        var answer = Practice.Planner.Search.Solver.Solve(
            pricing.Model,
            Effort.Day,
            CancellationToken.None
        );
        if (answer.Values is null)
            return null;
        var values = pricing.Merge(answer.Values);
        AddMeal(plate.Index, Nonzero(plate, values));
        if (!answer.IsProven)
            return null;
        var cost = 0.0;
        foreach (var (variable, value) in Nonzero(plate, values))
            cost += costs[variable] * value;
        foreach (var row in rows)
            cost += row.CostOf(row.SumOf(values));
        return cost / Scale;
    }

    private void AddSharedRow(int r)
    {
        var row = _shared[r];
        var slack = _master.MakeNumVar(0, double.PositiveInfinity, "");
        _master.Objective().SetCoefficient(slack, row.Price!.Value);
        if (row.Low > -Row.Unbounded)
        {
            _atLeast[r] = _master.MakeConstraint(row.Low, double.PositiveInfinity);
            _atLeast[r]!.SetCoefficient(slack, row.Step);
        }
        if (row.High < Row.Unbounded)
        {
            _atMost[r] = _master.MakeConstraint(double.NegativeInfinity, row.High);
            _atMost[r]!.SetCoefficient(slack, -row.Step);
        }
    }

    private void AddMeal(int plate, Dictionary<int, long> meal)
    {
        if (!_known.Add($"{plate}:{string.Join(',', meal.OrderBy(v => v.Key))}"))
            return;
        var mixed = _master.MakeNumVar(0, 1, "");
        _oneMeal[plate].SetCoefficient(mixed, 1);
        _master.Objective().SetCoefficient(mixed, OwnCost(plate, meal));
        var sums = new Dictionary<int, long>();
        foreach (var (variable, value) in meal)
        foreach (var (row, coefficient) in _touches[variable])
            sums[row] = sums.GetValueOrDefault(row) + coefficient * value;
        foreach (var (row, sum) in sums)
        {
            _atLeast[row]?.SetCoefficient(mixed, sum);
            _atMost[row]?.SetCoefficient(mixed, sum);
        }
    }

    private double OwnCost(int plate, Dictionary<int, long> meal)
    {
        var values = new long[_model.Variables.Count];
        foreach (var (variable, value) in meal)
            values[variable] = value;
        return meal.Sum(v => _model.Costs[v.Key] * v.Value)
            + _model.Rows.Where(r => r.Plate == plate).Sum(r => r.CostOf(r.SumOf(values)));
    }

    private static Dictionary<int, long> Nonzero(Plate plate, long[] values) =>
        Enumerable
            .Range(plate.FirstVariable, plate.VariableCount)
            .Where(v => values[v] != 0)
            .ToDictionary(v => v, v => values[v]);
}
