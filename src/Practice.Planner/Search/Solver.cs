using Google.OrTools.Sat;

namespace Practice.Planner.Search;

/// <summary>How hard to try: one worker and a count of deterministic work, so that load changes nothing but the wait.</summary>
internal enum Effort
{
    /// <summary>A few plates of a menu.</summary>
    Neighbourhood,

    /// <summary>One step of many towards an explanation.</summary>
    Step,

    /// <summary>Whether a day's limits can be kept at all.</summary>
    Question,

    /// <summary>The least change of a day, while somebody waits.</summary>
    Rebalance,

    /// <summary>One day, to the end if it can be reached.</summary>
    Day,
}

/// <summary>What the solver found.</summary>
/// <param name="Values">A solution; null when there is none or none was found.</param>
/// <param name="IsProven">Whether the answer is final: optimal, or no solution exists.</param>
/// <param name="Core">Assumptions that cannot hold together, when no solution exists.</param>
/// <param name="Bound">No solution costs less.</param>
internal sealed record Answer(
    IReadOnlyList<long>? Values,
    bool IsProven,
    IReadOnlyList<int> Core,
    double Bound = double.NegativeInfinity
)
{
    public bool IsImpossible => Values is null && IsProven;
}

/// <summary>
/// The one door to the constraint solver. Its parameters are fixed text, since a misspelt one ends the process; the
/// limit on clock time is only a safety net and far beyond what the deterministic limit allows.
/// </summary>
internal static class Solver
{
    public static Answer Solve(CpModel model, Effort effort, CancellationToken cancel)
    {
        using var stop = new StopWhenCancelled(cancel);
        var solver = new CpSolver { StringParameters = ParametersOf(effort) };
        using var registration = cancel.Register(solver.StopSearch);
        var status = solver.Solve(model, stop);
        return status switch
        {
            CpSolverStatus.Optimal or CpSolverStatus.Feasible => new Answer(
                [.. solver.Response!.Solution],
                status == CpSolverStatus.Optimal,
                [],
                solver.BestObjectiveBound
            ),
            CpSolverStatus.Infeasible => new Answer(
                null,
                true,
                [.. solver.Response!.SufficientAssumptionsForInfeasibility]
            ),
            CpSolverStatus.ModelInvalid => throw new InvalidOperationException(
                $"The solver rejects the model: {model.Validate()}"
            ),
            _ => new Answer(null, false, []),
        };
    }

    // probing and repeated presolve cost more than they bring on models this small; the linear relaxation is worth it
    private const string OneWorker =
        "num_workers:1 random_seed:1 linearization_level:2 symmetry_level:0 cp_model_probing_level:0 max_presolve_iterations:1 ";

    private static string ParametersOf(Effort effort) =>
        OneWorker
        + effort switch
        {
            Effort.Neighbourhood => "max_deterministic_time:0.1 max_time_in_seconds:20",
            Effort.Step => "max_deterministic_time:0.4 max_time_in_seconds:40",
            Effort.Question => "max_deterministic_time:1.2 max_time_in_seconds:40",
            Effort.Rebalance =>
                "use_objective_lb_search:true max_deterministic_time:0.3 max_time_in_seconds:20",
            _ => "use_objective_lb_search:true max_deterministic_time:3 max_time_in_seconds:60",
        };

    // a stop asked for before the native search has begun is lost: every solution looks at the token again.
    // Nothing may be thrown from a callback: it would end the process.
    private sealed class StopWhenCancelled(CancellationToken cancel) : CpSolverSolutionCallback
    {
        public override void OnSolutionCallback()
        {
            if (cancel.IsCancellationRequested)
                StopSearch();
        }
    }
}
