using Practice.Planner.Model;

namespace Practice.Planner.Search;

/// <summary>What a set of variables costs by some rows, kept up to date as the variables change.</summary>
internal sealed class Score
{
    private readonly int _first;
    private readonly Held[] _rows;
    private readonly long[] _values;
    private readonly long[] _costs;

    // the rows a variable touches lie between its place here and that of the next
    private readonly int[] _touchesFrom;
    private readonly Touch[] _touches;

    private Score(
        MenuModel model,
        int first,
        int count,
        IEnumerable<Row> rows,
        long? brokenSense,
        IReadOnlyList<long>? costs = null
    )
    {
        _first = first;
        _values = new long[count];
        _costs = [.. (costs ?? model.Costs).Skip(first).Take(count)];
        var held = rows.Where(r => !r.IsLink).ToArray();
        _rows = [.. held.Select(r => new Held(r, brokenSense))];
        var touches = Enumerable.Range(0, count).Select(_ => new List<Touch>()).ToArray();
        for (var r = 0; r < held.Length; r++)
        for (var i = 0; i < held[r].Variables.Length; i++)
            touches[held[r].Variables[i] - first].Add(new Touch(r, held[r].Coefficients[i]));
        _touches = [.. touches.SelectMany(t => t)];
        _touchesFrom = new int[count + 1];
        for (var v = 0; v < count; v++)
            _touchesFrom[v + 1] = _touchesFrom[v] + touches[v].Count;
        foreach (ref var row in _rows.AsSpan())
        {
            Cost += row.Cost;
            Broken += row.IsBroken ? 1 : 0;
        }
    }

    /// <summary>One plate by itself: rows that span several plates are left to <see cref="Annealing"/>.</summary>
    /// <param name="model">The whole question.</param>
    /// <param name="plate">The plate.</param>
    /// <param name="brokenSense">What a broken rule of meal sense costs; absurdly much when null.</param>
    /// <param name="costs">What each variable of the menu costs; as the model has it when null.</param>
    public static Score OfPlate(
        MenuModel model,
        Plate plate,
        long? brokenSense = null,
        IReadOnlyList<long>? costs = null
    ) =>
        new(
            model,
            plate.FirstVariable,
            plate.VariableCount,
            model.Rows.Where(r => r.Plate == plate.Index),
            brokenSense,
            costs
        );

    /// <summary>A whole menu.</summary>
    /// <param name="model">The whole question.</param>
    /// <param name="rows">The rows that count.</param>
    /// <param name="brokenSense">
    /// What a broken rule of meal sense costs here, so that a search may pass through a meal that makes none.
    /// </param>
    public static Score OfMenu(MenuModel model, IEnumerable<Row> rows, long brokenSense) =>
        new(model, 0, model.Variables.Count, rows, brokenSense);

    /// <summary>Cost as it stands; unless priced otherwise a broken rule makes it absurdly large.</summary>
    public long Cost { get; private set; }

    /// <summary>How many hard rules are broken.</summary>
    public int Broken { get; private set; }

    /// <summary>Whether no hard rule is broken.</summary>
    public bool MakesSense => Broken == 0;

    public long ValueOf(int variable) => _values[variable - _first];

    public void Set(int variable, long value)
    {
        var local = variable - _first;
        var change = value - _values[local];
        if (change == 0)
            return;
        _values[local] = value;
        var cost = Cost + _costs[local] * change;
        var rows = _rows;
        foreach (
            ref readonly var touch in _touches.AsSpan(_touchesFrom[local].._touchesFrom[local + 1])
        )
        {
            ref var row = ref rows[touch.Row];
            row.Sum += touch.Coefficient * change;
            var before = row.Cost;
            row.Cost = row.CostOfSum();
            cost += row.Cost - before;
            if (row.IsHard)
                Broken += (row.Cost > 0 ? 1 : 0) - (before > 0 ? 1 : 0);
        }
        Cost = cost;
    }

    private readonly record struct Touch(int Row, long Coefficient);

    /// <summary>A row with its sum as it stands, laid out for speed: this is where a build spends its time.</summary>
    private struct Held
    {
        private readonly long _low;
        private readonly long _high;
        private readonly long _price;
        private readonly long _step;
        private readonly long _anyway;

        public Held(Row row, long? brokenSense)
        {
            (_low, _high, IsHard) = (row.Low, row.High, row.IsHard);
            (_price, _step, _anyway) =
                row.Price is { } price ? (price, row.Step, 0L)
                : brokenSense is { } broken ? (broken, row.Coefficients.Max(Math.Abs), 0L)
                : (1L, 1L, Row.Forbidden);
            Cost = CostOfSum();
        }

        public bool IsHard { get; }
        public long Sum { get; set; }
        public long Cost { get; set; }
        public readonly bool IsBroken => IsHard && Cost > 0;

        public readonly long CostOfSum()
        {
            long over;
            if (Sum > _high)
                over = Sum - _high;
            else if (Sum < _low)
                over = _low - Sum;
            else
                return 0;
            return _anyway + _price * (_step == 1 ? over : (over + _step - 1) / _step);
        }
    }
}
