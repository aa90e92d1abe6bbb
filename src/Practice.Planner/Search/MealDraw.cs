using Practice.Domain.Foods;
using Practice.Planner.Meals;
using Practice.Planner.Model;

namespace Practice.Planner.Search;

/// <summary>
/// Draws meals for one plate: a pattern, foods for its parts (dear ones seldom), then the amounts, each moved to where
/// the plate is cheapest while the others stand still.
/// </summary>
internal sealed class MealDraw
{
    private const int Rounds = 3;

    private readonly Plate _plate;
    private readonly Score _score;
    private readonly Candidate[] _locked;
    private readonly Dictionary<MealRole, Weighted<Candidate>> _byRole;
    private readonly Weighted<PatternChoice> _patterns;

    public MealDraw(MenuModel model, Plate plate)
    {
        _plate = plate;
        _score = Score.OfPlate(model, plate);
        _locked = [.. plate.Candidates.Where(c => c.IsLocked)];
        _byRole = plate
            .Candidates.Where(c => !c.IsLocked)
            .GroupBy(c => c.Role)
            .ToDictionary(
                g => g.Key,
                g => new Weighted<Candidate>(g, c => Chance.AtPrice(model.Costs[c.Present]))
            );
        _patterns = new Weighted<PatternChoice>(
            plate.Patterns.Where(p => p.Pattern != MealPatterns.Nothing),
            p => Chance.AtPrice(model.Costs[p.Chosen] / 2) * Welcome(p.Pattern)
        );
    }

    /// <summary>One meal, or null when the draw came to nothing that makes sense.</summary>
    /// <param name="charges">Extra charge for one step of each candidate, to draw meals of another kind.</param>
    /// <param name="random">Where the luck comes from.</param>
    public Meal? Next(long[] charges, Random random)
    {
        if (_patterns.IsEmpty)
            return null;
        var pattern = _patterns.Pick(random);
        var foods = Foods(pattern.Pattern, random);
        if (foods is null || foods.Count > Meals.Helpings.MostFoods(_plate.Kind))
            return null;

        var steps = foods.Select(c => c.Servings[random.Next(c.Servings.Length)]).ToArray();
        _score.Set(pattern.Chosen, 1);
        for (var i = 0; i < foods.Count; i++)
        {
            _score.Set(foods[i].Present, 1);
            _score.Set(foods[i].Amount, steps[i]);
        }
        Settle(foods, steps, charges);
        var meal = _score.MakesSense
            ? new Meal(pattern, [.. foods.Zip(steps, (c, s) => new Helping(c, s))], _score.Cost)
            : null;

        _score.Set(pattern.Chosen, 0);
        foreach (var food in foods)
        {
            _score.Set(food.Present, 0);
            _score.Set(food.Amount, 0);
        }
        return meal;
    }

    /// <summary>The empty plate: what is left when nothing can be drawn, with whatever is locked on it.</summary>
    public Meal Nothing() =>
        Priced(
            new Meal(
                _plate.Patterns.Single(p => p.Pattern == MealPatterns.Nothing),
                [.. _locked.Select(c => new Helping(c, c.Servings[0]))],
                0
            )
        );

    /// <summary>A meal that was drawn elsewhere, with its cost on this plate.</summary>
    public Meal Priced(Meal meal)
    {
        foreach (var (variable, value) in meal.Values)
            _score.Set(variable, value);
        var cost = _score.Cost;
        foreach (var (variable, _) in meal.Values)
            _score.Set(variable, 0);
        return meal with { Cost = cost };
    }

    private void Settle(List<Candidate> foods, int[] steps, long[] charges)
    {
        for (var round = 0; round < Rounds; round++)
        {
            var moved = false;
            for (var i = 0; i < foods.Count; i++)
            {
                var charge = charges[foods[i].Amount - _plate.FirstVariable];
                var best = steps[i];
                var bestCost = _score.Cost + charge * best;
                foreach (var serving in foods[i].Servings)
                {
                    _score.Set(foods[i].Amount, serving);
                    var cost = _score.Cost + charge * serving;
                    if (cost < bestCost)
                        (best, bestCost) = (serving, cost);
                }
                _score.Set(foods[i].Amount, best);
                moved |= best != steps[i];
                steps[i] = best;
            }
            if (!moved)
                return;
        }
    }

    private List<Candidate>? Foods(MealPattern pattern, Random random)
    {
        var foods = new List<Candidate>(_locked);
        foreach (var part in pattern.Parts)
        {
            var wanted = part.Least;
            while (wanted < part.Most && random.NextDouble() < Appetite(part.Role))
                wanted++;
            wanted -= foods.Count(c => c.Role == part.Role);
            for (; wanted > 0; wanted--)
                if (!TryAdd(foods, part.Role, random) && part.Least > 0)
                    return null;
        }
        return GoTogether(foods, pattern, random) ? foods : null;
    }

    // bread calls for a spread, a spread without bread is taken off again
    private bool GoTogether(List<Candidate> foods, MealPattern pattern, Random random)
    {
        foreach (var coupling in Couplings.All)
        {
            var isCovered = foods.Exists(c => coupling.Dependants.Contains(c.Role));
            if (!foods.Exists(c => coupling.Hosts.Contains(c.Role)))
                foods.RemoveAll(c => !c.IsLocked && coupling.Dependants.Contains(c.Role));
            else if (
                !isCovered
                && coupling.Least > 0
                && foods.Exists(c => coupling.Needing.Contains(c.Role))
            )
            {
                var roles = coupling.Dependants.Where(r =>
                    pattern.Find(r) is not null && _byRole.ContainsKey(r)
                );
                if (!roles.Any(r => TryAdd(foods, r, random)) && _locked.Length == 0)
                    return false;
            }
        }
        return true;
    }

    private bool TryAdd(List<Candidate> foods, MealRole role, Random random)
    {
        if (!_byRole.TryGetValue(role, out var choices))
            return false;
        var food = choices.Pick(random);
        if (foods.Exists(c => c.Food.Family == food.Food.Family))
            return false;
        foods.Add(food);
        return true;
    }

    // a pattern that has no place for what is locked is a last resort
    private double Welcome(MealPattern pattern) =>
        Array.TrueForAll(_locked, c => pattern.Find(c.Role) is not null) ? 1 : 0.01;

    private static double Appetite(MealRole role) =>
        role switch
        {
            MealRole.Drink or MealRole.Dessert or MealRole.Fruit => 0.5,
            MealRole.Protein => 0.8,
            MealRole.Bread or MealRole.Spread => 0.3,
            _ => 0.4,
        };
}
