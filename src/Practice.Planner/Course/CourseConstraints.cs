using Google.OrTools.Sat;
using Practice.Planner.Model;
using Practice.Planner.Search;

namespace Practice.Planner.Course;

/// <summary>
/// The course as a constraint model in which some offers are free and the others stay as they are, begun from counts at
/// hand. Its limit is one of deterministic work, not of time, so that the same course gives the same schedule.
/// </summary>
internal sealed class CourseConstraints
{
    private readonly CourseModel _course;
    private readonly long[] _counts;
    private readonly int[] _free;
    private readonly CpModel _model = new();

    /// <param name="course">The whole question.</param>
    /// <param name="counts">An answer to begin from.</param>
    /// <param name="free">The offers that may change; all of them when null.</param>
    public CourseConstraints(CourseModel course, long[] counts, IEnumerable<int>? free = null)
    {
        (_course, _counts) = (course, counts);
        _free = [.. free ?? Enumerable.Range(0, counts.Length)];
        Proto.Objective = new CpObjectiveProto();
        Proto.SolutionHint = new PartialVariableAssignment();
        var places = new int?[counts.Length];
        foreach (var offer in _free)
            places[offer] = Variable(course.Offers[offer].Most, counts[offer], course.Costs[offer]);
        foreach (var row in course.Rows)
            Add(row, places);
    }

    private CpModelProto Proto => _model.Model;

    /// <summary>The best counts found, and whether they are proven to be; null when there was no time for any.</summary>
    public (long[] Counts, bool IsProven)? Solve(double work, CancellationToken cancel)
    {
        var answer = Solver.Solve(_model, work, cancel);
        return answer.Values is { } values ? (CountsOf(values), answer.IsProven) : null;
    }

    private long[] CountsOf(IReadOnlyList<long> solution)
    {
        var counts = (long[])_counts.Clone();
        for (var i = 0; i < _free.Length; i++)
            counts[_free[i]] = solution[i];
        return counts;
    }

    private void Add(Row row, int?[] places)
    {
        long least = 0,
            most = 0,
            settled = 0;
        var sum = new LinearConstraintProto();
        for (var i = 0; i < row.Variables.Length; i++)
        {
            var (offer, amount) = (row.Variables[i], row.Coefficients[i]);
            if (places[offer] is not { } place)
            {
                settled += amount * _counts[offer];
                continue;
            }
            sum.Vars.Add(place);
            sum.Coeffs.Add(amount);
            var reach = amount * _course.Offers[offer].Most;
            least += Math.Min(0, reach);
            most += Math.Max(0, reach);
        }
        var low = row.Low == -Row.Unbounded ? long.MinValue : row.Low - settled;
        var high = row.High == Row.Unbounded ? long.MaxValue : row.High - settled;
        var (canFallShort, canExceed) = (least < low, most > high);
        if (sum.Vars.Count == 0 || (!canFallShort && !canExceed))
            return;
        if (row.IsHard)
        {
            Bound(sum, canFallShort ? low : long.MinValue, canExceed ? high : long.MaxValue);
            return;
        }
        var worst = Math.Max(canFallShort ? low - least : 0, canExceed ? most - high : 0);
        // one thing more and no sum can reach the step: the slack then counts whole
        var step = Math.Min(row.Step, worst);
        var slack = Variable(
            (worst + step - 1) / step,
            row.Excess(row.SumOf(_counts)),
            row.Price!.Value
        );
        if (canFallShort)
            Bound(With(sum, slack, step), low, long.MaxValue);
        if (canExceed)
            Bound(With(sum, slack, -step), long.MinValue, high);
    }

    private int Variable(long most, long hint, long cost)
    {
        var place = Proto.Variables.Count;
        Proto.Variables.Add(new IntegerVariableProto { Domain = { 0, most } });
        Proto.SolutionHint.Vars.Add(place);
        Proto.SolutionHint.Values.Add(hint);
        if (cost != 0)
        {
            Proto.Objective.Vars.Add(place);
            Proto.Objective.Coeffs.Add(cost);
        }
        return place;
    }

    private static LinearConstraintProto With(LinearConstraintProto sum, int slack, long times)
    {
        var with = sum.Clone();
        with.Vars.Add(slack);
        with.Coeffs.Add(times);
        return with;
    }

    private void Bound(LinearConstraintProto sum, long low, long high)
    {
        sum.Domain.Add(low);
        sum.Domain.Add(high);
        Proto.Constraints.Add(new ConstraintProto { Linear = sum });
    }
}
