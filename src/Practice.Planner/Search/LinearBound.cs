using Google.OrTools.LinearSolver;
using Google.OrTools.Sat;

namespace Practice.Planner.Search;

/// <summary>
/// What no menu can go below: the model with portions that may be cut as finely as one likes, solved exactly. Certain,
/// but not sharp.
/// </summary>
internal static class LinearBound
{
    // the linear solver works in floating point: what is smaller than this is nothing
    private const double Grain = 1e-4;

    /// <summary>The least possible objective; null when even cut-up portions satisfy nothing.</summary>
    public static double? Of(CpModel model)
    {
        using var solver =
            Google.OrTools.LinearSolver.Solver.CreateSolver("GLOP")
            ?? throw new InvalidOperationException("The linear solver is missing.");
        var proto = model.Model;
        var variables = proto
            .Variables.Select(v => solver.MakeNumVar(v.Domain[0], v.Domain[^1], ""))
            .ToArray();
        foreach (var constraint in proto.Constraints)
        {
            var linear = constraint.Linear;
            var row = solver.MakeConstraint(Bound(linear.Domain[0]), Bound(linear.Domain[1]), "");
            for (var i = 0; i < linear.Vars.Count; i++)
                row.SetCoefficient(variables[linear.Vars[i]], linear.Coeffs[i]);
        }
        var objective = solver.Objective();
        for (var i = 0; i < proto.Objective.Vars.Count; i++)
            objective.SetCoefficient(variables[proto.Objective.Vars[i]], proto.Objective.Coeffs[i]);
        objective.SetMinimization();
        return solver.Solve() switch
        {
            Google.OrTools.LinearSolver.Solver.ResultStatus.OPTIMAL => Math.Max(
                0,
                objective.Value() - Grain
            ),
            Google.OrTools.LinearSolver.Solver.ResultStatus.INFEASIBLE => null,
            _ => 0,
        };
    }

    private static double Bound(long value) =>
        value switch
        {
            long.MinValue => double.NegativeInfinity,
            long.MaxValue => double.PositiveInfinity,
            _ => value,
        };
}
