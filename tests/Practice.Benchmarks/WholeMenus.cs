using Google.OrTools.Sat;
using Practice.Planner.Model;
using Practice.Planner.Search;

namespace Practice.Benchmarks;

/// <summary>
/// What menus of whole meals cannot cost less than. The meals of one that costs less than so much cost together less above the
/// least of their plates than lies between that cost and the bound, and so does each of them: all such meals are
/// listed, and a menu of them is looked for by branch and bound.
/// </summary>
internal sealed class WholeMenus(MenuModel model, MixedBound bound)
{
    private const int Parts = 10;

    // more than these and neither the list nor the search comes to an end
    private const int MostMeals = 8000;

    // what is computed in floating point is trusted to this
    private const double Rounding = 1;

    private const string Effort = "num_workers:2 linearization_level:2 max_time_in_seconds:90";

    private readonly Row[] _sharedRows = [.. model.Rows.Where(r => r.Plate < 0)];

    /// <summary>What is proven, in tenths of the way from the bound to a menu.</summary>
    /// <param name="menu">The menu's meals, plate by plate.</param>
    /// <param name="menuCost">What the menu costs.</param>
    public double Bound(Meal[] menu, long menuCost)
    {
        // the search must judge a menu as the planner does, or its proofs are worth nothing
        var judge = new CpSolver();
        if (
            judge.Solve(Choice([.. menu.Select(meal => (Meal[])[meal])])) != CpSolverStatus.Optimal
            || Math.Abs(judge.ObjectiveValue - menuCost) > Rounding
        )
            throw new InvalidOperationException($"The menu does not cost {menuCost} here.");
        var proven = bound.Value;
        for (var part = 1; part <= Parts; part++)
        {
            var cost = bound.Value + part * (menuCost - bound.Value) / Parts;
            if (!IsNoneBelow(cost))
                break;
            proven = cost;
        }
        return proven;
    }

    // false as well when it could not be decided
    private bool IsNoneBelow(double cost)
    {
        if (Affordable(cost) is not { } meals)
            return false;
        while (Array.TrueForAll(meals, ofPlate => ofPlate.Length > 0))
        {
            using var mixture = new Mixture(model);
            foreach (var (plate, all) in meals.Index())
            foreach (var meal in all)
                mixture.Add(plate, meal);
            if (!mixture.Mix())
                return false;
            if (mixture.Cost >= cost + Rounding)
                return true;
            Meal[][] left =
            [
                .. model.Plates.Select(p =>
                    mixture.Nearest(p.Index, cost - mixture.Cost + Rounding).ToArray()
                ),
            ];
            if (left.Sum(m => m.Length) == meals.Sum(m => m.Length))
                return IsNoneBelow(cost, meals);
            meals = left;
        }
        return true;
    }

    private bool IsNoneBelow(double cost, Meal[][] meals)
    {
        var choice = Choice(meals);
        choice.Model.Objective.Domain.Add(long.MinValue);
        choice.Model.Objective.Domain.Add((long)Math.Ceiling(cost) - 1);
        return new CpSolver { StringParameters = Effort }.Solve(choice)
            == CpSolverStatus.Infeasible;
    }

    /// <summary>The meals a menu below a cost can be of; null when they are too many.</summary>
    private Meal[][]? Affordable(double cost)
    {
        var meals = new Meal[]?[model.Plates.Count];
        Parallel.ForEach(
            model.Plates,
            plate =>
            {
                var ceiling = bound.LeastOfPlate[plate.Index] + cost - bound.Value + Rounding;
                var listing = new MealListing(model, plate, bound.Costs);
                if (listing.Under(ceiling, MostMeals) is not { } all)
                    return;
                var keys = all.Select(m => m.Key).ToHashSet();
                if (
                    bound
                        .Met[plate.Index]
                        .Any(m => listing.CostOf(m) < ceiling - Rounding && !keys.Contains(m.Key))
                )
                    throw new InvalidOperationException("A meal is missing from the list.");
                meals[plate.Index] = [.. all];
            }
        );
        Meal[][] found = [.. meals.OfType<Meal[]>()];
        return found.Length == meals.Length && found.Sum(m => m.Length) <= MostMeals ? found : null;
    }

    // one meal a plate
    private CpModel Choice(Meal[][] meals)
    {
        var choice = new CpModel();
        var total = LinearExpr.NewBuilder();
        var sums = _sharedRows.Select(_ => LinearExpr.NewBuilder()).ToArray();
        var touches = Touches.Of(model, _sharedRows);
        foreach (var plate in model.Plates)
        {
            var draw = new MealDraw(model, plate);
            var picks = new List<ILiteral>();
            foreach (var meal in meals[plate.Index])
            {
                var pick = choice.NewBoolVar("");
                picks.Add(pick);
                total.AddTerm(pick, draw.Priced(meal).Cost);
                foreach (var (variable, value) in meal.Values)
                foreach (var (row, coefficient) in touches[variable])
                    sums[row].AddTerm(pick, coefficient * value);
            }
            choice.AddExactlyOne(picks);
        }
        foreach (var (row, sum) in _sharedRows.Zip(sums))
        {
            var slack = choice.NewIntVar(0, int.MaxValue, "");
            total.AddTerm(slack, row.Price!.Value);
            if (row.Low > -Row.Unbounded)
                choice.Add(sum + slack * row.Step >= row.Low);
            if (row.High < Row.Unbounded)
                choice.Add(sum - slack * row.Step <= row.High);
        }
        choice.Minimize(total);
        return choice;
    }
}
