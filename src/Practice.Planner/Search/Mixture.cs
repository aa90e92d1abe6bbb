using Google.OrTools.LinearSolver;
using Practice.Planner.Model;

namespace Practice.Planner.Search;

/// <summary>
/// Mixes whole meals on every plate as finely as one likes: a linear programme, the master of Dantzig and Wolfe (1960; from memory).
/// No menu of these meals costs less than the mixture, and its prices tell what each row of several plates is worth.
/// </summary>
internal sealed class Mixture : IDisposable
{
    private readonly MenuModel _model;
    private readonly Google.OrTools.LinearSolver.Solver _solver;
    private readonly Constraint[] _oneMeal;
    private readonly Constraint?[] _atLeast;
    private readonly Constraint?[] _atMost;
    private readonly List<(int Row, long Coefficient)>[] _touches;
    private readonly MealDraw[] _draws;
    private readonly HashSet<long>[] _known;
    private readonly List<(Meal Meal, Google.OrTools.LinearSolver.Variable Share)>[] _meals;
    private readonly (Meal Meal, double Dearer)[][] _nearest;

    public Mixture(MenuModel model)
    {
        _model = model;
        SharedRows = [.. model.Rows.Where(r => r.Plate < 0)];
        _touches = Touches.Of(model, SharedRows);

        _solver =
            Google.OrTools.LinearSolver.Solver.CreateSolver("GLOP")
            ?? throw new InvalidOperationException("The linear solver is missing.");
        _solver.Objective().SetMinimization();
        // without preprocessing it goes on from the last mixture
        if (!_solver.SetSolverSpecificParametersAsString("use_preprocessing:false"))
            throw new InvalidOperationException("The linear solver does not know its parameters.");
        _oneMeal = [.. model.Plates.Select(_ => _solver.MakeConstraint(1, 1))];
        _atLeast = new Constraint?[SharedRows.Length];
        _atMost = new Constraint?[SharedRows.Length];
        for (var r = 0; r < SharedRows.Length; r++)
            AddRow(r);
        _draws = [.. model.Plates.Select(p => new MealDraw(model, p))];
        _known = [.. model.Plates.Select(_ => new HashSet<long>())];
        _meals =
        [
            .. model.Plates.Select(_ => new List<(Meal, Google.OrTools.LinearSolver.Variable)>()),
        ];
        _nearest = [.. model.Plates.Select(_ => Array.Empty<(Meal, double)>())];
    }

    /// <summary>The rows that span several plates.</summary>
    public Row[] SharedRows { get; }

    /// <summary>What the mixture costs; not a number before the first time it is mixed.</summary>
    public double Cost { get; private set; } = double.NaN;

    /// <summary>Puts a meal among those that may be mixed; nothing happens when it is there.</summary>
    public void Add(int plate, Meal meal)
    {
        if (!_known[plate].Add(meal.Key))
            return;
        var priced = _draws[plate].Priced(meal);
        var share = _solver.MakeNumVar(0, double.PositiveInfinity, "");
        _oneMeal[plate].SetCoefficient(share, 1);
        _solver.Objective().SetCoefficient(share, priced.Cost);
        var sums = new Dictionary<int, long>();
        foreach (var (variable, value) in priced.Values)
        foreach (var (row, coefficient) in _touches[variable])
            sums[row] = sums.GetValueOrDefault(row) + coefficient * value;
        foreach (var (row, sum) in sums)
        {
            _atLeast[row]?.SetCoefficient(share, sum);
            _atMost[row]?.SetCoefficient(share, sum);
        }
        _meals[plate].Add((priced, share));
    }

    /// <summary>Mixes anew; false when the linear solver came to nothing, and everything stays as it was.</summary>
    public bool Mix()
    {
        if (_solver.Solve() != Google.OrTools.LinearSolver.Solver.ResultStatus.OPTIMAL)
            return false;
        Cost = _solver.Objective().Value();
        // read at once: the solver forgets its outcome when a meal is added
        for (var plate = 0; plate < _meals.Length; plate++)
            _nearest[plate] =
            [
                .. _meals[plate]
                    .Select(m => (m.Meal, Dearer: m.Share.ReducedCost()))
                    .OrderBy(m => m.Dearer),
            ];
        Prices = [.. SharedRows.Select((_, r) => (Dual(_atLeast[r]), Dual(_atMost[r])))];
        return true;
    }

    /// <summary>A mixture of the meals nearest to this one, the rest forgotten.</summary>
    /// <param name="many">How many of each plate.</param>
    public Mixture Narrowed(int many)
    {
        var narrow = new Mixture(_model);
        foreach (var plate in _model.Plates)
        foreach (var meal in Nearest(plate.Index).Take(many))
            narrow.Add(plate.Index, meal);
        return narrow;
    }

    /// <summary>What a unit more would save in each shared row: below its floor, and above its ceiling.</summary>
    public IReadOnlyList<(double Floor, double Ceiling)> Prices { get; private set; } = [];

    /// <summary>Meals of a plate, those first that are in the mixture or would make it the least dearer.</summary>
    public IEnumerable<Meal> Nearest(int plate) => _nearest[plate].Select(m => m.Meal);

    /// <summary>Those of them that a menu of these meals can hold which costs so much more than the mixture.</summary>
    public IEnumerable<Meal> Nearest(int plate, double more) =>
        _nearest[plate].TakeWhile(m => m.Dearer <= more).Select(m => m.Meal);

    /// <summary>What one of each variable costs by itself once the shared rows are paid for at some prices.</summary>
    /// <param name="prices">One for each shared row.</param>
    public double[] CostsAt(IReadOnlyList<(double Floor, double Ceiling)> prices) =>
        [
            .. _model.Costs.Select(
                (cost, v) =>
                    cost
                    - _touches[v]
                        .Sum(t => (prices[t.Row].Floor + prices[t.Row].Ceiling) * t.Coefficient)
            ),
        ];

    public void Dispose() => _solver.Dispose();

    private static double Dual(Constraint? constraint) => constraint?.DualValue() ?? 0;

    private void AddRow(int r)
    {
        var row = SharedRows[r];
        var slack = _solver.MakeNumVar(0, double.PositiveInfinity, "");
        _solver.Objective().SetCoefficient(slack, row.Price!.Value);
        if (row.Low > -Row.Unbounded)
        {
            _atLeast[r] = _solver.MakeConstraint(row.Low, double.PositiveInfinity);
            _atLeast[r]!.SetCoefficient(slack, row.Step);
        }
        if (row.High < Row.Unbounded)
        {
            _atMost[r] = _solver.MakeConstraint(double.NegativeInfinity, row.High);
            _atMost[r]!.SetCoefficient(slack, -row.Step);
        }
    }
}
