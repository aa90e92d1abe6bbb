using Practice.Planner.Model;
using Practice.Planner.Search;
using LinearSolver = Google.OrTools.LinearSolver.Solver;

namespace Practice.Benchmarks;

/// <summary>
/// Lists every meal of a plate that costs at most so much, at given costs of its variables: none is left out. A linear programme over
/// single servings tells for each the least by which it makes a meal dearer. A serving for each part that the
/// pattern needs is laid first, with a programme of its own; others are added as long as they do not come to too much.
/// </summary>
internal sealed class MealListing
{
    private const double Grain = 1e-6;

    // for one pattern
    private const long MostLooks = 100_000_000;

    private readonly Plate _plate;
    private readonly double[] _costs;
    private readonly Row[] _rows;
    private readonly bool[] _onlyGrows;
    private readonly Serving[][] _foods;

    /// <param name="model">The whole question.</param>
    /// <param name="plate">The plate.</param>
    /// <param name="costs">What one of each variable of the model costs.</param>
    public MealListing(MenuModel model, Plate plate, double[] costs)
    {
        (_plate, _costs) = (plate, costs);
        _rows = [.. model.Rows.Where(r => r.Plate == plate.Index && !r.IsLink)];
        _onlyGrows = [.. _rows.Select(OnlyGrows)];
        var touches = Touches.Of(model, _rows);
        _foods =
        [
            .. plate.Candidates.Select(candidate =>
                candidate
                    .Servings.Select(steps => new Serving(
                        candidate,
                        steps,
                        costs[candidate.Present] + costs[candidate.Amount] * steps,
                        Together(touches[candidate.Present], touches[candidate.Amount], steps)
                    ))
                    .ToArray()
            ),
        ];
    }

    /// <summary>All of them.</summary>
    /// <param name="ceiling">What they cost at most.</param>
    /// <param name="most">How many are taken at most.</param>
    /// <returns>Null when there are more, or so many ways that not all were looked at.</returns>
    public List<Meal>? Under(double ceiling, int most)
    {
        var meals = new List<Meal>();
        return _plate.Patterns.All(pattern =>
            new Search(this, pattern, ceiling, most, meals).Lists(_foods)
        )
            ? meals
            : null;
    }

    /// <summary>What a meal costs by the costs given, its own rows included.</summary>
    public double CostOf(Meal meal)
    {
        var values = meal.Values.ToDictionary(v => v.Variable, v => v.Value);
        return values.Sum(v => _costs[v.Key] * v.Value) + _rows.Sum(row => row.CostOf(SumOf(row)));

        long SumOf(Row row) =>
            row
                .Variables.Zip(row.Coefficients)
                .Sum(t => t.Second * values.GetValueOrDefault(t.First));
    }

    /// <summary>
    /// The least that more of these foods cost if servings could be mixed, and for each serving by how much a meal with it costs more
    /// at least; null when they cannot make a meal.
    /// </summary>
    private (double Least, double[][] Dearer)? Mixed(Serving[][] foods, long[] sums)
    {
        using var solver =
            LinearSolver.CreateSolver("GLOP")
            ?? throw new InvalidOperationException("The linear solver is missing.");
        var objective = solver.Objective();
        objective.SetMinimization();
        var atLeast = new Google.OrTools.LinearSolver.Constraint?[_rows.Length];
        var atMost = new Google.OrTools.LinearSolver.Constraint?[_rows.Length];
        for (var r = 0; r < _rows.Length; r++)
        {
            var row = _rows[r];
            if (row.Low > -Row.Unbounded)
                atLeast[r] = solver.MakeConstraint(row.Low - sums[r], double.PositiveInfinity);
            if (row.High < Row.Unbounded)
                atMost[r] = solver.MakeConstraint(double.NegativeInfinity, row.High - sums[r]);
            if (row.Price is not { } price)
                continue;
            var slack = solver.MakeNumVar(0, double.PositiveInfinity, "");
            objective.SetCoefficient(slack, price);
            atLeast[r]?.SetCoefficient(slack, row.Step);
            atMost[r]?.SetCoefficient(slack, -row.Step);
        }
        var shares = foods
            .Select(ofFood =>
            {
                var once = solver.MakeConstraint(double.NegativeInfinity, 1);
                return ofFood.Select(serving => ShareOf(serving, once)).ToArray();
            })
            .ToArray();
        return solver.Solve() switch
        {
            LinearSolver.ResultStatus.OPTIMAL => (
                objective.Value(),
                [
                    .. shares.Select(ofFood =>
                        ofFood.Select(s => Math.Max(0, s.ReducedCost())).ToArray()
                    ),
                ]
            ),
            LinearSolver.ResultStatus.INFEASIBLE => null,
            var status => throw new InvalidOperationException($"The linear solver says {status}."),
        };

        Google.OrTools.LinearSolver.Variable ShareOf(
            Serving serving,
            Google.OrTools.LinearSolver.Constraint once
        )
        {
            var share = solver.MakeNumVar(0, double.PositiveInfinity, "");
            once.SetCoefficient(share, 1);
            objective.SetCoefficient(share, serving.Cost);
            foreach (var (row, sum) in serving.Sums)
            {
                atLeast[row]?.SetCoefficient(share, sum);
                atMost[row]?.SetCoefficient(share, sum);
            }
            return share;
        }
    }

    private bool IsTooMuch(long[] sums, Serving serving)
    {
        foreach (var (row, sum) in serving.Sums)
            if (_onlyGrows[row] && sums[row] + sum > _rows[row].High)
                return true;
        return false;
    }

    // a rule that more food can only break further
    private bool OnlyGrows(Row row) =>
        row.IsHard
        && row.Variables.Zip(row.Coefficients)
            .All(t => t.Second >= 0 || Array.Exists(_plate.Patterns, p => p.Chosen == t.First));

    private static (int Row, long Sum)[] Together(
        List<(int Row, long Coefficient)> present,
        List<(int Row, long Coefficient)> amount,
        int steps
    ) =>
        [
            .. present
                .Concat(amount.Select(t => (t.Row, Coefficient: t.Coefficient * steps)))
                .GroupBy(t => t.Row, t => t.Coefficient)
                .Select(t => (t.Key, t.Sum())),
        ];

    /// <summary>One food in one amount, and what it brings to the rows of its plate.</summary>
    private sealed record Serving(
        Candidate Candidate,
        int Steps,
        double Cost,
        (int Row, long Sum)[] Sums
    );

    /// <summary>Puts the meals of one pattern together.</summary>
    private sealed class Search
    {
        private readonly MealListing _listing;
        private readonly PatternChoice _pattern;
        private readonly double _ceiling;
        private readonly int _most;
        private readonly List<Meal> _meals;
        private readonly List<Serving> _on = [];
        private readonly long[] _sums;
        private double _cost;
        private long _looks;

        public Search(
            MealListing listing,
            PatternChoice pattern,
            double ceiling,
            int most,
            List<Meal> meals
        )
        {
            (_listing, _pattern, _ceiling, _most, _meals) = (
                listing,
                pattern,
                ceiling,
                most,
                meals
            );
            _cost = listing._costs[pattern.Chosen];
            _sums = new long[listing._rows.Length];
            for (var r = 0; r < _sums.Length; r++)
            {
                var row = listing._rows[r];
                var place = Array.IndexOf(row.Variables, pattern.Chosen);
                _sums[r] = place < 0 ? 0 : row.Coefficients[place];
            }
        }

        /// <summary>Lists the meals that more of these foods make of what is laid; false when it had to give up.</summary>
        public bool Lists(Serving[][] foods)
        {
            foods =
            [
                .. foods
                    .Select(servings =>
                        servings.Where(s => !_listing.IsTooMuch(_sums, s)).ToArray()
                    )
                    .Where(servings => servings.Length > 0),
            ];
            if (_listing.Mixed(foods, _sums) is not { } mixed)
                return true;
            var left = _ceiling - _cost - mixed.Least;
            if (left < -Grain)
                return true;
            (Serving Serving, double Dearer)[][] affordable =
            [
                .. foods
                    .Zip(
                        mixed.Dearer,
                        (servings, dearer) =>
                            servings
                                .Zip(dearer)
                                .Where(s => s.Second <= left + Grain)
                                .OrderBy(s => s.Second)
                                .ToArray()
                    )
                    .Where(servings => servings.Length > 0)
                    .OrderBy(servings => servings[0].Second),
            ];
            return
                _pattern.Pattern.Parts.FirstOrDefault(p =>
                    _on.Count(s => s.Candidate.Role == p.Role) < p.Least
                )
                    is { } part
                ? Fills(part.Role, affordable)
                : Adds(affordable, left, 0);
        }

        // each food in its turn; the next ones are listed without those that have had theirs
        private bool Fills(
            Practice.Domain.Foods.MealRole role,
            (Serving Serving, double Dearer)[][] foods
        )
        {
            var rest = foods.Select(f => f.Select(s => s.Serving).ToArray()).ToList();
            foreach (var food in rest.Where(f => f[0].Candidate.Role == role).ToList())
            {
                rest.Remove(food);
                foreach (var serving in food)
                {
                    Lay(serving);
                    var isDone = Lists([.. rest]);
                    TakeBack(serving);
                    if (!isDone)
                        return false;
                }
            }
            return true;
        }

        private bool Adds((Serving Serving, double Dearer)[][] foods, double left, int from)
        {
            if (++_looks > MostLooks)
                return false;
            if (IsMeal())
            {
                if (_meals.Count == _most)
                    return false;
                _meals.Add(
                    new Meal(_pattern, [.. _on.Select(s => new Helping(s.Candidate, s.Steps))], 0)
                );
            }
            for (var f = from; f < foods.Length; f++)
                foreach (var (serving, dearer) in foods[f])
                {
                    if (dearer > left + Grain)
                        break;
                    if (_listing.IsTooMuch(_sums, serving))
                        continue;
                    Lay(serving);
                    var isDone = Adds(foods, left - dearer, f + 1);
                    TakeBack(serving);
                    if (!isDone)
                        return false;
                }
            return true;
        }

        private void Lay(Serving serving)
        {
            _on.Add(serving);
            _cost += serving.Cost;
            foreach (var (row, sum) in serving.Sums)
                _sums[row] += sum;
        }

        private void TakeBack(Serving serving)
        {
            _on.RemoveAt(_on.Count - 1);
            _cost -= serving.Cost;
            foreach (var (row, sum) in serving.Sums)
                _sums[row] -= sum;
        }

        private bool IsMeal()
        {
            var cost = _cost;
            for (var r = 0; r < _sums.Length; r++)
            {
                var row = _listing._rows[r];
                if (row.IsHard && (_sums[r] < row.Low || _sums[r] > row.High))
                    return false;
                cost += row.CostOf(_sums[r]);
            }
            return cost <= _ceiling + Grain;
        }
    }
}
