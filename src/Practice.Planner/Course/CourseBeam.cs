using Practice.Planner.Model;

namespace Practice.Planner.Course;

/// <summary>
/// Goes along the course from start to finish and decides offer by offer, keeping the most promising beginnings. Two
/// beginnings that leave the same room in every row still open are one: the cheaper stays. What a row still open will
/// cost is guessed from how far it has come; a hard row never bends. The same width gives the same answer.
/// </summary>
internal sealed class CourseBeam
{
    // how much of a guessed cost counts: less, since what is missing can still come
    private const double TrustInGuess = 0.7;

    private readonly CourseModel _model;
    private readonly Stretch[] _rows;
    private readonly int[][] _active;
    private readonly long[][] _amounts;

    public CourseBeam(CourseModel model)
    {
        _model = model;
        _rows = [.. model.Rows.Select(r => new Stretch(r, model))];
        var offers = model.Offers.Length;
        _active = new int[offers][];
        _amounts = new long[offers][];
        for (var i = 0; i < offers; i++)
        {
            _active[i] = [.. Enumerable.Range(0, _rows.Length).Where(r => _rows[r].Has(i))];
            _amounts[i] = [.. _active[i].Select(r => _rows[r].AmountOf(i))];
        }
    }

    /// <summary>The best counts found; null when every beginning ended in a broken row.</summary>
    public long[]? Run(int width, CancellationToken cancel)
    {
        var offers = _model.Offers.Length;
        var nodes = new List<Node> { new(new long[_rows.Length], 0, 0, null, 0) };
        for (var i = 0; i < offers; i++)
        {
            if (cancel.IsCancellationRequested)
                return null;
            nodes = Next(nodes, i, width);
            if (nodes.Count == 0)
                return null;
        }
        return CountsOf(nodes.MinBy(n => n.Settled)!);
    }

    private List<Node> Next(List<Node> nodes, int offer, int width)
    {
        var children = new List<(double Score, double Settled, Node Parent, int Count)>();
        foreach (var node in nodes)
            for (var count = 0; count <= _model.Offers[offer].Most; count++)
                if (Judge(node, offer, count) is { } judged)
                    children.Add((judged.Score, judged.Settled, node, count));
        children.Sort((a, b) => a.Score.CompareTo(b.Score));
        var next = new List<Node>(width);
        var seen = new HashSet<long>();
        foreach (var (_, settled, parent, count) in children)
        {
            var sums = SumsAfter(parent, offer, count);
            if (!seen.Add(KeyOf(sums, offer)))
                continue;
            next.Add(new Node(sums, settled, 0, parent, count));
            if (next.Count == width)
                break;
        }
        return next;
    }

    private (double Score, double Settled)? Judge(Node node, int offer, int count)
    {
        var settled = node.Settled + _model.Costs[offer] * count;
        double guess = 0;
        var (active, amounts) = (_active[offer], _amounts[offer]);
        for (var a = 0; a < active.Length; a++)
        {
            var row = _rows[active[a]];
            var sum = node.Sums[active[a]] + amounts[a] * count;
            if (row.Last == offer)
            {
                if (row.IsHard && row.Excess(sum) > 0)
                    return null;
                settled += row.IsHard ? 0 : row.Cost(sum);
            }
            else if (row.IsHard)
            {
                if (row.CannotBeMended(sum, offer))
                    return null;
            }
            else
                guess += row.Guess(sum, offer);
        }
        return (settled + TrustInGuess * guess, settled);
    }

    private long[] SumsAfter(Node parent, int offer, int count)
    {
        var sums = (long[])parent.Sums.Clone();
        if (count > 0)
            for (var a = 0; a < _active[offer].Length; a++)
                sums[_active[offer][a]] += _amounts[offer][a] * count;
        return sums;
    }

    // rows that are over or not begun say nothing about what is to come
    private long KeyOf(long[] sums, int offer)
    {
        long key = 17;
        foreach (var r in _active[offer])
            if (_rows[r].Last > offer)
                key = unchecked(key * 1_000_003 + _rows[r].Room(sums[r]) + r);
        return key;
    }

    private long[] CountsOf(Node node)
    {
        var counts = new long[_model.Offers.Length];
        for (var (i, at) = (counts.Length - 1, node); i >= 0; i--, at = at.Parent!)
            counts[i] = at.Count;
        return counts;
    }

    private sealed record Node(long[] Sums, double Settled, double Guess, Node? Parent, int Count);

    /// <summary>A row as it is met along the course.</summary>
    private sealed class Stretch
    {
        private readonly Row _row;
        private readonly Dictionary<int, long> _amounts = [];
        private readonly double[] _come;
        private readonly long[] _mostToCome;
        private readonly long[] _leastToCome;

        public Stretch(Row row, CourseModel model)
        {
            _row = row;
            for (var i = 0; i < row.Variables.Length; i++)
                _amounts[row.Variables[i]] =
                    _amounts.GetValueOrDefault(row.Variables[i]) + row.Coefficients[i];
            First = row.Variables.Min();
            Last = row.Variables.Max();
            var offers = model.Offers;
            var (begin, end) = (offers[First].Minute, offers[Last].Minute);
            _come = new double[Last + 1];
            _mostToCome = new long[Last + 2];
            _leastToCome = new long[Last + 2];
            for (var i = Last; i >= First; i--)
            {
                _come[i] = end > begin ? (offers[i].Minute - begin) / (end - begin) : 1;
                var amount = AmountOf(i) * offers[i].Most;
                _mostToCome[i] = _mostToCome[i + 1] + Math.Max(0, amount);
                _leastToCome[i] = _leastToCome[i + 1] + Math.Min(0, amount);
            }
        }

        public int First { get; }
        public int Last { get; }
        public bool IsHard => _row.IsHard;

        public bool Has(int offer) => offer >= First && offer <= Last;

        public long AmountOf(int offer) => _amounts.GetValueOrDefault(offer);

        public long Excess(long sum) => _row.Excess(sum);

        public double Cost(long sum) => _row.CostOf(sum);

        /// <summary>What is left in a row that ends the same whichever way: a kind once taken stays taken.</summary>
        public long Room(long sum) => _row.Step == int.MaxValue ? Math.Min(sum, 1) : sum;

        public bool CannotBeMended(long sum, int offer) =>
            sum + _leastToCome[offer + 1] > _row.High || sum + _mostToCome[offer + 1] < _row.Low;

        /// <summary>What it will cost, if it goes on as it came: a part of the floor should have come by now.</summary>
        public double Guess(long sum, int offer)
        {
            var price = (double)_row.Price!.Value;
            if (_row.Step == int.MaxValue)
                return sum > _row.High ? price : 0;
            if (sum > _row.High)
                return price * (sum - _row.High) / _row.Step;
            if (_row.Low == -Row.Unbounded)
                return 0;
            var due = _row.Low * _come[offer];
            var cannot = _row.Low - _mostToCome[offer + 1];
            var missing = Math.Max(due - sum, cannot - sum);
            return missing > 0 ? price * missing / _row.Step : 0;
        }
    }
}
