using Practice.Planner.Model;

namespace Practice.Planner.Search;

/// <summary>
/// Picks one meal a plate so that the days come right: meals are changed at random, a change for the worse is accepted
/// less and less often, and at the end every plate takes the best of its meals until none helps.
/// </summary>
internal sealed class Annealing
{
    private const double Cold = 200;

    private readonly Row[] _rows;
    private readonly Meal[][] _meals;
    private readonly (int Row, long Amount)[][][] _adds;
    private readonly int[][] _platesOfSameDay;
    private readonly int[] _picked;
    private readonly long[] _sums;

    public Annealing(MenuModel model, Meal[][] meals)
    {
        _meals = meals;
        _rows = [.. model.Rows.Where(r => r.Plate < 0)];
        _adds = AddsOf(model);
        _platesOfSameDay =
        [
            .. model.Plates.Select(p => model.PlatesOf(p.Day).Select(q => q.Index).ToArray()),
        ];
        _picked = new int[meals.Length];
        _sums = new long[_rows.Length];
        Cost = _rows.Sum(r => r.CostOf(0));
        for (var plate = 0; plate < meals.Length; plate++)
            Put(plate, 1);
    }

    public long Cost { get; private set; }

    public IEnumerable<Meal> Picked => _picked.Select((meal, plate) => _meals[plate][meal]);

    /// <summary>Picks anew, for a number of moves.</summary>
    /// <param name="moves">How many.</param>
    /// <param name="hot">Warmth at the start, in the unit of prices: how readily a worse menu is accepted.</param>
    /// <param name="seed">The same seed, the same menu.</param>
    /// <param name="cancel">Ends it with the best so far.</param>
    public void Run(int moves, double hot, int seed, CancellationToken cancel)
    {
        Descend(cancel);
        var random = new Random(seed);
        var best = (int[])_picked.Clone();
        var bestCost = Cost;
        var cooling = Math.Pow(Cold / hot, 1.0 / moves);
        var warmth = hot;
        for (var i = 0; i < moves; i++, warmth *= cooling)
        {
            if (i % 4096 == 0 && cancel.IsCancellationRequested)
                break;
            Move(random, warmth);
            if (Cost >= bestCost)
                continue;
            bestCost = Cost;
            _picked.CopyTo(best, 0);
        }
        for (var plate = 0; plate < best.Length; plate++)
            Pick(plate, best[plate]);
        Descend(cancel);
    }

    /// <summary>
    /// Every two plates of a day take the best of their meals until none helps: they can be better together where neither
    /// is alone. Time grows with the square of the number of meals.
    /// </summary>
    public void DescendByPairs(CancellationToken cancel)
    {
        long cost;
        do
        {
            cost = Cost;
            for (var one = 0; one < _picked.Length; one++)
                foreach (var other in _platesOfSameDay[one].Where(p => p > one))
                    if (!cancel.IsCancellationRequested)
                        TakeBestOf(one, other);
        } while (Cost < cost);
    }

    // one plate takes another meal, or two of a day do
    private void Move(Random random, double warmth)
    {
        var before = Cost;
        var one = random.Next(_picked.Length);
        var oneWas = _picked[one];
        Pick(one, random.Next(_meals[one].Length));

        var mates = _platesOfSameDay[one];
        var other = random.Next(3) == 0 ? mates[random.Next(mates.Length)] : one;
        var otherWas = _picked[other];
        if (other != one)
            Pick(other, random.Next(_meals[other].Length));

        if (Cost <= before || random.NextDouble() < Math.Exp((before - Cost) / warmth))
            return;
        if (other != one)
            Pick(other, otherWas);
        Pick(one, oneWas);
    }

    private void Descend(CancellationToken cancel)
    {
        var improved = true;
        while (improved && !cancel.IsCancellationRequested)
        {
            improved = false;
            for (var plate = 0; plate < _picked.Length; plate++)
            {
                var was = _picked[plate];
                var (best, bestCost) = (was, Cost);
                for (var meal = 0; meal < _meals[plate].Length; meal++)
                {
                    Pick(plate, meal);
                    if (Cost < bestCost)
                        (best, bestCost) = (meal, Cost);
                }
                Pick(plate, best);
                improved |= best != was;
            }
        }
    }

    private void TakeBestOf(int one, int other)
    {
        var (bestOne, bestOther, bestCost) = (_picked[one], _picked[other], Cost);
        for (var i = 0; i < _meals[one].Length; i++)
        for (var j = 0; j < _meals[other].Length; j++)
        {
            Pick(one, i);
            Pick(other, j);
            if (Cost < bestCost)
                (bestOne, bestOther, bestCost) = (i, j, Cost);
        }
        Pick(one, bestOne);
        Pick(other, bestOther);
    }

    private void Pick(int plate, int meal)
    {
        if (_picked[plate] == meal)
            return;
        Put(plate, -1);
        _picked[plate] = meal;
        Put(plate, 1);
    }

    private void Put(int plate, int sign)
    {
        var cost = Cost + sign * _meals[plate][_picked[plate]].Cost;
        foreach (var (row, amount) in _adds[plate][_picked[plate]])
        {
            var before = _sums[row];
            var after = before + sign * amount;
            _sums[row] = after;
            cost += _rows[row].CostOf(after) - _rows[row].CostOf(before);
        }
        Cost = cost;
    }

    private (int, long)[][][] AddsOf(MenuModel model)
    {
        var touches = Touches.Of(model, _rows);
        return [.. _meals.Select(meals => meals.Select(AddsOf).ToArray())];

        (int, long)[] AddsOf(Meal meal)
        {
            var adds = new SortedDictionary<int, long>();
            foreach (var (variable, value) in meal.Values)
            foreach (var (row, coefficient) in touches[variable])
                adds[row] = adds.GetValueOrDefault(row) + coefficient * value;
            return [.. adds.Where(a => a.Value != 0).Select(a => (a.Key, a.Value))];
        }
    }
}
