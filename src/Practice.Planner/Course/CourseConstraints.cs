using System.Globalization;
using Google.OrTools.Sat;
using Practice.Planner.Model;

namespace Practice.Planner.Course;

/// <summary>
/// The course as a constraint model, begun from counts at hand. Its limit is one of deterministic work, not of time, so
/// that the same course gives the same schedule.
/// </summary>
internal sealed class CourseConstraints
{
    public static string Text =
        "num_workers:1 random_seed:1 linearization_level:2 symmetry_level:0 cp_model_probing_level:0 max_presolve_iterations:1";
    private readonly CourseModel _course;
    private readonly long[] _counts;
    private readonly CpModel _model = new();
    private readonly IntVar[] _variables;
    private readonly List<(IntVar Variable, long Cost)> _costs = [];

    public CourseConstraints(CourseModel course, long[] counts)
    {
        (_course, _counts) = (course, counts);
        _variables = new IntVar[counts.Length];
        for (var i = 0; i < counts.Length; i++)
        {
            _variables[i] = _model.NewIntVar(0, course.Offers[i].Most, "");
            _model.AddHint(_variables[i], counts[i]);
            _costs.Add((_variables[i], course.Costs[i]));
        }
        foreach (var row in course.Rows)
            Add(row);
        _model.Minimize(
            LinearExpr.WeightedSum(
                _costs.Select(c => c.Variable).ToArray(),
                _costs.Select(c => c.Cost).ToArray()
            )
        );
    }

    /// <summary>The best counts found, and whether they are proven to be; null when there was no time for any.</summary>
    public (long[] Counts, bool IsProven)? Solve(
        double work,
        double seconds,
        Action<long[]>? onSolution,
        CancellationToken cancel
    )
    {
        using var watch = new Watch(this, onSolution, cancel);
        var solver = new CpSolver
        {
            StringParameters = string.Create(
                CultureInfo.InvariantCulture,
                $"{Text} max_deterministic_time:{work} max_time_in_seconds:{seconds}"
            ),
        };
        using var registration = cancel.Register(solver.StopSearch);
        var status = solver.Solve(_model, watch);
        return status switch
        {
            CpSolverStatus.Optimal => (CountsOf(solver.Value), true),
            CpSolverStatus.Feasible => (CountsOf(solver.Value), false),
            CpSolverStatus.ModelInvalid => throw new InvalidOperationException(
                $"The solver rejects the model: {_model.Validate()}"
            ),
            _ => null,
        };
    }

    private long[] CountsOf(Func<IntVar, long> value) => [.. _variables.Select(value)];

    private void Add(Row row)
    {
        long least = 0,
            most = 0;
        for (var i = 0; i < row.Variables.Length; i++)
        {
            var reach = row.Coefficients[i] * _course.Offers[row.Variables[i]].Most;
            least += Math.Min(0, reach);
            most += Math.Max(0, reach);
        }
        var sum = LinearExpr.WeightedSum(
            row.Variables.Select(v => _variables[v]).ToArray(),
            row.Coefficients
        );
        var under = least < row.Low ? row.Low : (long?)null;
        var over = most > row.High ? row.High : (long?)null;
        if (row.Price is not { } price)
        {
            if (under is { } low)
                _model.Add(sum >= low);
            if (over is { } high)
                _model.Add(sum <= high);
            return;
        }
        var worst = Math.Max((under ?? least) - least, most - (over ?? most));
        var slack = _model.NewIntVar(0, (worst + row.Step - 1) / row.Step, "");
        _model.AddHint(slack, row.Excess(row.SumOf(_counts)));
        // one thing more and no sum can reach the step: the slack then counts whole
        var step = Math.Min(row.Step, worst);
        if (under is { } floor)
            _model.Add(sum + slack * step >= floor);
        if (over is { } ceiling)
            _model.Add(sum - slack * step <= ceiling);
        _costs.Add((slack, price));
    }

    // nothing may be thrown from here: it would end the process
    private sealed class Watch(
        CourseConstraints constraints,
        Action<long[]>? onSolution,
        CancellationToken cancel
    ) : CpSolverSolutionCallback
    {
        public override void OnSolutionCallback()
        {
            try
            {
                if (cancel.IsCancellationRequested)
                    StopSearch();
                onSolution?.Invoke(constraints.CountsOf(Value));
            }
            catch (Exception)
            {
                StopSearch();
            }
        }
    }
}
