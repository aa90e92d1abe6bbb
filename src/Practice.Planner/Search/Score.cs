using Practice.Planner.Model;

namespace Practice.Planner.Search;

/// <summary>What a set of variables costs by some rows, kept up to date as the variables change.</summary>
internal sealed class Score
{
    private readonly int _first;
    private readonly Row[] _rows;
    private readonly long[] _sums;
    private readonly long[] _values;
    private readonly long[] _costs;
    private readonly (int Row, long Coefficient)[][] _touches;

    private Score(MenuModel model, int first, int count, IEnumerable<Row> rows)
    {
        _first = first;
        _values = new long[count];
        _costs = [.. model.Costs.Skip(first).Take(count)];
        _rows = [.. rows.Where(r => !r.IsLink)];
        _sums = new long[_rows.Length];
        var touches = Enumerable.Range(0, count).Select(_ => new List<(int, long)>()).ToArray();
        for (var r = 0; r < _rows.Length; r++)
        for (var i = 0; i < _rows[r].Variables.Length; i++)
            touches[_rows[r].Variables[i] - first].Add((r, _rows[r].Coefficients[i]));
        _touches = [.. touches.Select(t => t.ToArray())];
        Cost = _rows.Sum(r => r.CostOf(0));
    }

    /// <summary>One plate by itself: rows that span several plates are left to <see cref="Annealing"/>.</summary>
    public static Score OfPlate(MenuModel model, Plate plate) =>
        new(
            model,
            plate.FirstVariable,
            plate.VariableCount,
            model.Rows.Where(r => r.Plate == plate.Index)
        );

    /// <summary>The whole menu as it stands, by all rows or some of them.</summary>
    public static Score OfMenu(MenuModel model, long[] values, Func<Row, bool> counts)
    {
        var score = new Score(model, 0, model.Variables.Count, model.Rows.Where(counts));
        for (var v = 0; v < values.Length; v++)
            score.Set(v, values[v]);
        return score;
    }

    /// <summary>Cost as it stands; a broken rule makes it absurdly large.</summary>
    public long Cost { get; private set; }

    /// <summary>Whether no hard rule is broken.</summary>
    public bool MakesSense => Cost < Row.Forbidden;

    public void Set(int variable, long value)
    {
        var local = variable - _first;
        var change = value - _values[local];
        if (change == 0)
            return;
        _values[local] = value;
        var cost = Cost + _costs[local] * change;
        foreach (var (row, coefficient) in _touches[local])
        {
            var before = _sums[row];
            var after = before + coefficient * change;
            cost += _rows[row].CostOf(after) - _rows[row].CostOf(before);
            _sums[row] = after;
        }
        Cost = cost;
    }
}
