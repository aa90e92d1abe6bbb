using Google.OrTools.LinearSolver;
using Practice.Planner.Model;
using Practice.Planner.Search;
using Solver = Google.OrTools.LinearSolver.Solver;

namespace Practice.Benchmarks;

/// <summary>The cheapest menu of given meals, by branch and bound.</summary>
internal static class BestOfMeals
{
    private const long Milliseconds = 300_000;

    /// <param name="model">The whole question.</param>
    /// <param name="meals">Meals for each plate.</param>
    /// <param name="known">A menu of them: the search starts from it.</param>
    /// <returns>What no menu of them costs less than: as far as was proven within five minutes.</returns>
    public static double Bound(MenuModel model, Meal[][] meals, Meal[] known)
    {
        using var solver =
            Solver.CreateSolver("SCIP")
            ?? throw new InvalidOperationException("The solver for whole numbers is missing.");
        solver.Objective().SetMinimization();
        var touches = model
            .Rows.Where(r => r.Plate < 0)
            .Select(row => new SharedRow(solver, row))
            .SelectMany(row =>
                row.Row.Variables.Zip(
                    row.Row.Coefficients,
                    (v, c) => (Variable: v, Row: row, By: c)
                )
            )
            .ToLookup(t => t.Variable);

        var hint = new MPVariableVector();
        var hinted = new List<double>();
        for (var plate = 0; plate < meals.Length; plate++)
        {
            var one = solver.MakeConstraint(1, 1);
            foreach (var meal in meals[plate])
            {
                var chosen = solver.MakeBoolVar("");
                one.SetCoefficient(chosen, 1);
                solver.Objective().SetCoefficient(chosen, meal.Cost);
                foreach (
                    var row in meal
                        .Values.SelectMany(m =>
                            touches[m.Variable].Select(t => (t.Row, Sum: t.By * m.Value))
                        )
                        .GroupBy(t => t.Row)
                )
                    row.Key.Charge(chosen, row.Sum(t => t.Sum));
                hint.Add(chosen);
                hinted.Add(meal.Key == known[plate].Key ? 1 : 0);
            }
        }
        solver.SetHint(hint, [.. hinted]);
        solver.SetTimeLimit(Milliseconds);
        solver.Solve();
        return solver.Objective().BestBound();
    }

    private sealed class SharedRow
    {
        private readonly Constraint? _atLeast;
        private readonly Constraint? _atMost;

        public SharedRow(Solver solver, Row row)
        {
            Row = row;
            var steps = solver.MakeIntVar(0, double.PositiveInfinity, "");
            solver.Objective().SetCoefficient(steps, row.Price!.Value);
            if (row.Low > -Row.Unbounded)
            {
                _atLeast = solver.MakeConstraint(row.Low, double.PositiveInfinity);
                _atLeast.SetCoefficient(steps, row.Step);
            }
            if (row.High < Row.Unbounded)
            {
                _atMost = solver.MakeConstraint(double.NegativeInfinity, row.High);
                _atMost.SetCoefficient(steps, -row.Step);
            }
        }

        public Row Row { get; }

        public void Charge(Google.OrTools.LinearSolver.Variable chosen, long sum)
        {
            _atLeast?.SetCoefficient(chosen, sum);
            _atMost?.SetCoefficient(chosen, sum);
        }
    }
}
