using Google.OrTools.Sat;
using Practice.Planner.Model;
using Practice.Planner.Search;

namespace Practice.Benchmarks;

/// <summary>Every meal of a plate that does not cost more than a ceiling, found by the constraint solver.</summary>
internal sealed class Enumeration
{
    /// <summary>More meals than this are not worth having.</summary>
    public const int Most = 30_000;

    private readonly Plate _plate;
    private readonly CpModel _model = new();
    private readonly IntVar[] _variables;

    /// <param name="model">The whole question.</param>
    /// <param name="plate">The plate.</param>
    /// <param name="costs">What one of each variable costs, in whole numbers.</param>
    /// <param name="scale">How many of their unit make one of the prices of the plate's rows.</param>
    /// <param name="ceiling">The most a meal may cost, in their unit.</param>
    public Enumeration(MenuModel model, Plate plate, long[] costs, int scale, long ceiling)
    {
        _plate = plate;
        _variables =
        [
            .. Enumerable
                .Range(plate.FirstVariable, plate.VariableCount)
                .Select(v =>
                    _model.NewIntVarFromDomain(
                        Google.OrTools.Util.Domain.FromValues(model.Variables[v].Values),
                        $"v{v}"
                    )
                ),
        ];
        var cost = LinearExpr.NewBuilder();
        for (var v = 0; v < _variables.Length; v++)
            cost.AddTerm(_variables[v], costs[plate.FirstVariable + v]);
        foreach (var row in model.Rows.Where(r => r.Plate == plate.Index))
            Add(row, cost, scale);
        _model.AddLinearConstraint(cost, long.MinValue / 2, ceiling);
    }

    /// <summary>The meals; null when there are too many, or they could not all be found in time.</summary>
    public List<Meal>? All()
    {
        var collect = new Collect(this);
        var solver = new CpSolver
        {
            StringParameters = "num_workers:1 enumerate_all_solutions:true max_time_in_seconds:600",
        };
        var status = solver.Solve(_model, collect);
        return status switch
        {
            CpSolverStatus.Optimal => collect.Meals,
            CpSolverStatus.Infeasible => [],
            _ => null,
        };
    }

    // each excess is what it is, not what it is at least: or one meal would be found many times
    private void Add(Row row, LinearExprBuilder cost, int scale)
    {
        var sum = LinearExpr.WeightedSum(
            row.Variables.Select(v => _variables[v - _plate.FirstVariable]),
            row.Coefficients
        );
        if (row.IsHard)
        {
            _model.AddLinearConstraint(
                sum,
                Math.Max(row.Low, long.MinValue / 4),
                Math.Min(row.High, long.MaxValue / 4)
            );
            return;
        }
        var most = row.Coefficients.Sum(Math.Abs) * 100 + Math.Abs(Finite(row.Low, row.High));
        var over = _model.NewIntVar(0, most, "over");
        List<LinearExpr> ends = [LinearExpr.Constant(0)];
        if (row.Low > -Row.Unbounded)
            ends.Add(row.Low - sum);
        if (row.High < Row.Unbounded)
            ends.Add(sum - row.High);
        _model.AddMaxEquality(over, ends);
        var steps = over;
        if (row.Step > 1)
        {
            steps = _model.NewIntVar(0, most, "steps");
            _model.AddLinearConstraint(row.Step * steps - over, 0, row.Step - 1);
        }
        cost.AddTerm(steps, scale * row.Price!.Value);
    }

    private static long Finite(long low, long high) =>
        Math.Max(
            low > -Row.Unbounded ? Math.Abs(low) : 0,
            high < Row.Unbounded ? Math.Abs(high) : 0
        );

    private sealed class Collect(Enumeration of) : CpSolverSolutionCallback
    {
        public List<Meal> Meals { get; } = [];

        public override void OnSolutionCallback()
        {
            var first = of._plate.FirstVariable;
            Meals.Add(ColumnGeneration.MealOn(of._plate, v => Value(of._variables[v - first])));
            if (Meals.Count > Most)
                StopSearch();
        }
    }
}
