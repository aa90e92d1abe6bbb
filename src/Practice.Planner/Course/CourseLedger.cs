using System.Numerics;

namespace Practice.Planner.Course;

/// <summary>
/// What an answer costs while it is changed: a change is noted offer by offer, priced as a whole, then kept or dropped.
/// It begins where nothing is taken.
/// </summary>
internal sealed class CourseLedger
{
    private static readonly int Lanes = CourseWay.Lanes;

    private readonly IReadOnlyList<long> _costs;
    private readonly (int From, int[] Amounts)[] _near;
    private readonly int[][] _long;
    private readonly int _longFrom;
    private readonly int[] _low;
    private readonly int[] _high;
    private readonly float[] _step;
    private readonly float[] _price;
    private readonly int[] _sums;
    private readonly int[] _next;
    private readonly float[] _paid;
    private readonly float[] _asked;
    private int _from;
    private int _to;
    private long _own;

    public CourseLedger(CourseModel model)
    {
        var way = new CourseWay(model, fromFinish: false);
        (_costs, _longFrom) = (way.Costs, way.LongFrom);
        _low = [.. way.Rows.Select(r => r is null ? 0 : OpenRows.Bound(r.Low))];
        _high = [.. way.Rows.Select(r => r is null ? 0 : OpenRows.Bound(r.High))];
        _step = [.. way.Rows.Select(r => r is null ? 1f : r.Step)];
        _price = [.. way.Rows.Select(r => r is null ? 0 : r.Price ?? OpenRows.Forbidden)];
        (_sums, _next) = (new int[way.Length], new int[way.Length]);
        (_paid, _asked) = (new float[way.Length], new float[way.Length]);
        _near = [.. way.Touches.Select(t => NearOf([.. t.Where(r => r.Row < _longFrom)]))];
        _long =
        [
            .. way.Touches.Select(t =>
                Filled(t.Where(r => r.Row >= _longFrom), _longFrom, way.Length)
            ),
        ];
        _to = _longFrom;
        Price();
        Keep();
    }

    /// <summary>Notes so many more of an offer.</summary>
    public void Note(int offer, int by)
    {
        var (from, amounts) = _near[offer];
        Add(amounts, from, by);
        Add(_long[offer], _longFrom, by);
        (_from, _to) = (Math.Min(_from, from), Math.Max(_to, from + amounts.Length));
        _own += by * _costs[offer];
    }

    /// <summary>What the noted change costs more.</summary>
    public float Price() => _own + Price(_from, _to) + Price(_longFrom, _sums.Length);

    /// <summary>Makes the noted change.</summary>
    public void Keep()
    {
        Copy(_next, _sums);
        Copy(_asked, _paid);
        Forget();
    }

    /// <summary>Forgets the noted change.</summary>
    public void Drop()
    {
        Copy(_sums, _next);
        Forget();
    }

    private void Forget() => (_from, _to, _own) = (_longFrom, 0, 0);

    private void Copy<T>(T[] from, T[] to)
    {
        if (_to > _from)
            from.AsSpan(_from, _to - _from).CopyTo(to.AsSpan(_from));
        from.AsSpan(_longFrom).CopyTo(to.AsSpan(_longFrom));
    }

    private void Add(int[] amounts, int from, int by)
    {
        for (var v = 0; v < amounts.Length; v += Lanes)
            (new Vector<int>(_next, from + v) + new Vector<int>(amounts, v) * by).CopyTo(
                _next,
                from + v
            );
    }

    private float Price(int from, int to)
    {
        var more = Vector<float>.Zero;
        for (var v = from; v < to; v += Lanes)
        {
            var sum = new Vector<int>(_next, v);
            var over = Vector.Max(
                Vector.Max(sum - new Vector<int>(_high, v), new Vector<int>(_low, v) - sum),
                Vector<int>.Zero
            );
            var asked =
                Vector.Ceiling(Vector.ConvertToSingle(over) / new Vector<float>(_step, v))
                * new Vector<float>(_price, v);
            asked.CopyTo(_asked, v);
            more += asked - new Vector<float>(_paid, v);
        }
        return Vector.Sum(more);
    }

    private static (int, int[]) NearOf(List<(int Row, long Amount)> touches)
    {
        if (touches.Count == 0)
            return (0, []);
        var from = touches.Min(t => t.Row) / Lanes * Lanes;
        return (from, Filled(touches, from, CourseWay.Padded(touches.Max(t => t.Row) + 1)));
    }

    private static int[] Filled(IEnumerable<(int Row, long Amount)> touches, int from, int to)
    {
        var amounts = new int[to - from];
        foreach (var (row, amount) in touches)
            amounts[row - from] += (int)amount;
        return amounts;
    }
}
