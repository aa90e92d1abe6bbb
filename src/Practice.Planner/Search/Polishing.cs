using Practice.Planner.Model;

namespace Practice.Planner.Search;

/// <summary>How long to polish.</summary>
/// <param name="RoundsPerPlate">How often, on average, each plate is given another meal.</param>
/// <param name="Hot">Warmth at the start, in the unit of prices: how readily a worse menu is accepted.</param>
internal sealed record PolishingPace(int RoundsPerPlate, double Hot);

/// <summary>
/// Lays another meal of the pool on one plate or two of a day, lets single foods settle around it, and keeps the outcome
/// when the menu is better for it, or by luck when it is a little worse, less and less often. Meals that make no sense
/// may be passed through, never kept.
/// </summary>
internal sealed class Polishing
{
    // what a broken rule of meal sense costs while meals are moved about
    private const long BrokenSense = 20_000;

    private const double Cold = 50;

    // meals looked at for one that is laid
    private const int Tries = 10;

    private static readonly Cooling AfterAMeal = new(200, 400, 50, 5000);

    private readonly Meal[][] _meals;
    private readonly Table _table;
    private readonly Settling _settling;
    private readonly Random _random;
    private readonly int[][] _platesOfSameDay;
    private readonly LastMeals[] _kept;

    public Polishing(MenuModel model, Meal[][] meals, IReadOnlyCollection<Meal> start, int seed)
    {
        (_meals, _random) = (meals, new Random(seed));
        _table = new Table(model, Score.OfMenu(model, model.Rows, BrokenSense), start);
        _settling = new Settling(model, _table, model.Costs, _random);
        _kept = [.. model.Plates.Select(_ => new LastMeals())];
        _platesOfSameDay =
        [
            .. model.Plates.Select(p => model.PlatesOf(p.Day).Select(q => q.Index).ToArray()),
        ];
    }

    /// <summary>Meals of a plate in menus that were kept, the last ones: good in this company.</summary>
    public IEnumerable<Meal> GoodMealsOf(int plate) => _kept[plate].All;

    /// <summary>Works for a number of rounds and returns the best menu that was seen.</summary>
    public long[] Run(PolishingPace pace, CancellationToken cancel)
    {
        var (best, bestCost) = (_table.Values(), _table.Cost);
        var rounds = pace.RoundsPerPlate * _meals.Length;
        var cooling = Math.Pow(Cold / pace.Hot, 1.0 / rounds);
        var warmth = pace.Hot;
        for (var round = 0; round < rounds; round++, warmth *= cooling)
        {
            if (round % 64 == 0 && cancel.IsCancellationRequested)
                break;
            var before = _table.Cost;
            _table.Keep();
            var day = _platesOfSameDay[_random.Next(_meals.Length)];
            ChangeMeals(day, before);
            if (!Chance.Accepts(_table.Cost - before, warmth, _random))
                _table.TakeBack(0);
            else if (_table.MakesSense)
            {
                foreach (var plate in day)
                    _kept[plate].Add(_table.MealOn(plate));
                if (_table.Cost < bestCost)
                    (best, bestCost) = (_table.Values(), _table.Cost);
            }
        }
        return best;
    }

    private void ChangeMeals(int[] day, long before)
    {
        var plate = day[_random.Next(day.Length)];
        Lay(plate);
        if (_random.Next(4) == 0)
            Lay(day[_random.Next(day.Length)]);
        _settling.Run(plate, day, before, AfterAMeal);
    }

    // the best of a few meals, by what the menu costs with it
    private void Lay(int plate)
    {
        var mark = _table.Mark;
        var (best, bestCost) = (_meals[plate][0], long.MaxValue);
        for (var i = 0; i < Tries; i++)
        {
            var meal = _meals[plate][_random.Next(_meals[plate].Length)];
            _table.Lay(plate, meal);
            if (_table.Cost < bestCost)
                (best, bestCost) = (meal, _table.Cost);
            _table.TakeBack(mark);
        }
        _table.Lay(plate, best);
    }
}
