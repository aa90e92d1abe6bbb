using Practice.Domain.Foods;
using Practice.Planner.Model;

namespace Practice.Planner.Search;

/// <summary>How long to move things about, and how readily changes for the worse are accepted on the way.</summary>
/// <param name="Moves">How many moves.</param>
/// <param name="Hot">Warmth at the start, in the unit of prices.</param>
/// <param name="Cold">Warmth at the end.</param>
/// <param name="Hopeless">A day that is still so much worse after a third of the moves is given up.</param>
internal sealed record Cooling(int Moves, double Hot, double Cold, long Hopeless)
{
    public double Factor { get; } = Math.Pow(Cold / Hot, 1.0 / Moves);
}

/// <summary>
/// Moves single foods of a day: an amount a little up or down, another food in the place of one, a food more or less.
/// Changes for the worse are accepted less and less often.
/// </summary>
internal sealed class Settling
{
    private readonly Table _table;
    private readonly Random _random;
    private readonly MenuModel _model;
    private readonly IReadOnlyList<long> _prices;
    private readonly Dictionary<MealRole, Weighted<Candidate>>?[] _byRole;

    /// <param name="model">The whole question.</param>
    /// <param name="table">The menu that is moved about.</param>
    /// <param name="prices">What each variable costs: dear foods are seldom tried.</param>
    /// <param name="random">Where the luck comes from.</param>
    public Settling(MenuModel model, Table table, IReadOnlyList<long> prices, Random random)
    {
        (_model, _table, _prices, _random) = (model, table, prices, random);
        _byRole = new Dictionary<MealRole, Weighted<Candidate>>?[model.Plates.Count];
    }

    /// <summary>Settles a day after one of its plates was changed.</summary>
    /// <param name="plate">The plate: half of the moves are on it.</param>
    /// <param name="mates">The plates of the day.</param>
    /// <param name="before">What the menu cost before the change.</param>
    /// <param name="cooling">How long.</param>
    /// <param name="onMove">Told of every move that was accepted.</param>
    public void Run(int plate, int[] mates, long before, Cooling cooling, Action? onMove = null)
    {
        var warmth = cooling.Hot;
        for (var i = 0; i < cooling.Moves; i++, warmth *= cooling.Factor)
        {
            if (i == cooling.Moves / 3 && _table.Cost > before + cooling.Hopeless)
                return;
            var (cost, mark) = (_table.Cost, _table.Mark);
            Move(_random.Next(2) == 0 ? plate : OneOf(mates), mates);
            if (!Chance.Accepts(_table.Cost - cost, warmth, _random))
                _table.TakeBack(mark);
            else
                onMove?.Invoke();
        }
    }

    private Dictionary<MealRole, Weighted<Candidate>> ByRole(int plate) =>
        _byRole[plate] ??= _model
            .Plates[plate]
            .Candidates.Where(c => !c.IsLocked)
            .GroupBy(c => c.Role)
            .ToDictionary(
                role => role.Key,
                role => new Weighted<Candidate>(role, c => Chance.AtPrice(_prices[c.Present]))
            );

    private void Move(int plate, int[] mates)
    {
        switch (_random.Next(100))
        {
            case < 35:
                Alter(plate);
                break;
            case < 50:
                Alter(plate);
                Alter(OneOf(mates));
                break;
            case < 80:
                Replace(plate);
                break;
            case < 87:
                Add(plate);
                break;
            case < 94:
                Remove(plate);
                break;
            default:
                Remove(plate);
                Add(plate);
                break;
        }
    }

    private void Alter(int plate)
    {
        var place = _table.Served(plate, _random);
        if (place < 0)
            return;
        var (food, steps) = _table[plate, place];
        var size = _random.Next(3) == 0 ? 2 : 1;
        var at = Array.IndexOf(food.Servings, steps) + (_random.Next(2) == 0 ? size : -size);
        if (at >= 0 && at < food.Servings.Length)
            _table.Put(plate, place, new Helping(food, food.Servings[at]));
    }

    private void Replace(int plate)
    {
        var place = _table.Served(plate, _random);
        if (place < 0)
            return;
        var goes = _table[plate, place];
        var comes = ByRole(plate)[goes.Candidate.Role].Pick(_random);
        if (!_table.Has(comes))
            _table.Put(plate, place, new Helping(comes, LikeSteps(goes, comes)));
    }

    private void Add(int plate)
    {
        var parts = _table.PatternOf(plate).Pattern.Parts;
        var place = _table.EmptyPlace(plate);
        if (place < 0 || parts.IsEmpty)
            return;
        if (!ByRole(plate).TryGetValue(parts[_random.Next(parts.Length)].Role, out var foods))
            return;
        var food = foods.Pick(_random);
        if (!_table.Has(food))
            _table.Put(plate, place, new Helping(food, OneOf(food.Servings)));
    }

    private void Remove(int plate)
    {
        var place = _table.Served(plate, _random);
        if (place >= 0)
            _table.Put(plate, place, default);
    }

    // as much carbohydrate, or as much cover, as what goes; sometimes a step beside
    private int LikeSteps(Helping goes, Candidate comes)
    {
        var byCover = goes.Candidate.Item.Cover > 0 && comes.Item.Cover > 0 && _random.Next(2) == 0;
        var wanted = goes.Steps * Measure(goes.Candidate.Item);
        var perStep = Measure(comes.Item);
        var servings = comes.Servings;
        var nearest = 0;
        for (var i = 1; i < servings.Length; i++)
            if (
                Math.Abs(servings[i] * perStep - wanted)
                < Math.Abs(servings[nearest] * perStep - wanted)
            )
                nearest = i;
        if (_random.Next(3) == 0)
            nearest += _random.Next(2) == 0 ? 1 : -1;
        return servings[Math.Clamp(nearest, 0, servings.Length - 1)];

        long Measure(Item item) => byCover ? item.Cover : item.Carbohydrate;
    }

    private T OneOf<T>(T[] things) => things[_random.Next(things.Length)];
}
