using System.Numerics;

namespace Practice.Planner.Course;

/// <summary>What a beam found.</summary>
/// <param name="Counts">The best counts; null when none cost less than was asked for.</param>
/// <param name="IsProven">Whether nothing was left out, so that nothing better exists.</param>
internal sealed record BeamAnswer(long[]? Counts, bool IsProven);

/// <summary>
/// Goes along the course and decides offer by offer, keeping the most promising beginnings. What a row still open will
/// cost is guessed from how far it has come; a hard row never bends. The same width gives the same answer.
/// </summary>
internal sealed class CourseBeam
{
    // how much of a guessed cost counts: little, since what is missing can still come
    private const float TrustInGuess = 0.2f;

    private readonly CourseWay _way;
    private readonly OpenRows[] _open;
    private readonly int _longs;
    private readonly int _stride;

    public CourseBeam(CourseModel model, bool fromFinish)
    {
        _way = new CourseWay(model, fromFinish);
        _open = OpenRows.Along(_way);
        _longs = _way.Length - _way.LongFrom;
        _stride = _open.Max(o => o.Near) + _longs;
    }

    /// <summary>How many sums one beginning goes through from end to end.</summary>
    public double Sums => (double)_open.Length * _stride;

    /// <summary>Looks for something cheaper.</summary>
    /// <param name="width">How many beginnings are kept.</param>
    /// <param name="below">What an answer must stay below.</param>
    /// <param name="cancel">Ends it without an answer.</param>
    public BeamAnswer Run(int width, long below, CancellationToken cancel)
    {
        var offers = _way.Offers;
        var (here, next) = (new int[width * _stride], new int[width * _stride]);
        var beginnings = new Beginnings(width * (1 + offers.Max(o => o.Most)));
        var kept = new Beginnings.Kept[offers.Length];
        float[] settled = [0];
        for (var i = 0; i < offers.Length; i++)
        {
            if (cancel.IsCancellationRequested)
                return new BeamAnswer(null, IsProven: false);
            beginnings.Clear();
            for (var node = 0; node < settled.Length; node++)
            for (var count = 0; count <= offers[i].Most; count++)
                Judge(i, here, node, settled[node], count, below, beginnings);
            kept[i] = beginnings.Best(width);
            settled = kept[i].Settled;
            if (i + 1 < offers.Length)
                for (var node = 0; node < settled.Length; node++)
                    Follow(i, here, kept[i].Parents[node], kept[i].Counts[node], next, node);
            (here, next) = (next, here);
        }
        return new BeamAnswer(CountsOf(kept), !Array.Exists(kept, k => k.LeftSomeOut));
    }

    private void Judge(
        int offer,
        int[] sums,
        int node,
        float settled,
        int count,
        long below,
        Beginnings beginnings
    )
    {
        var open = _open[offer];
        var own = sums.AsSpan(node * _stride, _stride);
        var view = new View();
        view.Over(open, own[..open.Near], count, 0);
        view.Over(open, own[^_longs..], count, open.Near);
        var (closed, guess) = (Vector.Sum(view.Settled), Vector.Sum(view.Guess));
        if (closed + guess >= OpenRows.Forbidden)
            return;
        closed += settled + _way.Costs[offer] * count;
        if (closed < below)
            beginnings.Add(closed + TrustInGuess * guess, closed, view.Key, node, (byte)count);
    }

    // the sums after an offer, laid out for the rows open at the next
    private void Follow(int offer, int[] here, int parent, int count, int[] next, int child)
    {
        var (open, then) = (_open[offer], _open[offer + 1]);
        var from = here.AsSpan(parent * _stride, _stride);
        var to = next.AsSpan(child * _stride, _stride);
        to.Clear();
        for (var v = then.From; v < open.To; v += CourseWay.Lanes)
            Sum(open, from, v - open.From, v - open.From, count).CopyTo(to[(v - then.From)..]);
        for (var v = 0; v < _longs; v += CourseWay.Lanes)
            Sum(open, from, _stride - _longs + v, open.Near + v, count)
                .CopyTo(to[(_stride - _longs + v)..]);
    }

    private static Vector<int> Sum(OpenRows open, Span<int> sums, int at, int place, int count) =>
        new Vector<int>(sums[at..]) + new Vector<int>(open.Amounts, place) * count;

    private long[]? CountsOf(Beginnings.Kept[] kept)
    {
        var settled = kept[^1].Settled;
        if (settled.Length == 0)
            return null;
        var counts = new long[kept.Length];
        var node = Array.IndexOf(settled, settled.Min());
        for (var i = kept.Length - 1; i >= 0; i--)
            (counts[i], node) = (kept[i].Counts[node], kept[i].Parents[node]);
        if (_way.FromFinish)
            Array.Reverse(counts);
        return counts;
    }

    /// <summary>What many rows say to a beginning, a vector of them at a time.</summary>
    private ref struct View
    {
        private Vector<int> _key;

        public Vector<float> Settled { get; private set; }
        public Vector<float> Guess { get; private set; }

        /// <summary>The same for two beginnings that leave the same room.</summary>
        public readonly ulong Key
        {
            get
            {
                ulong key = 14695981039346656037;
                for (var lane = 0; lane < CourseWay.Lanes; lane++)
                    key = unchecked((key ^ (uint)_key[lane]) * 1099511628211);
                return key ^ (key >> 29);
            }
        }

        public void Over(OpenRows open, ReadOnlySpan<int> sums, int count, int from)
        {
            // kept in registers through the loop
            var (settled, guess, key) = (Settled, Guess, _key);
            for (var v = 0; v < sums.Length; v += CourseWay.Lanes)
            {
                var at = from + v;
                var sum = new Vector<int>(sums[v..]) + new Vector<int>(open.Amounts, at) * count;
                var over = Vector.Max(
                    Vector.Max(
                        sum - new Vector<int>(open.High, at),
                        new Vector<int>(open.Low, at) - sum
                    ),
                    Vector<int>.Zero
                );
                var steps = Vector.Ceiling(
                    Vector.ConvertToSingle(over) / new Vector<float>(open.Step, at)
                );
                settled += steps * new Vector<float>(open.Settles, at);
                guess += steps * new Vector<float>(open.Guesses, at);
                var matters =
                    Vector.LessThan(sum, new Vector<int>(open.FreeFrom, at))
                    | Vector.GreaterThan(sum, new Vector<int>(open.FreeTo, at));
                var room = Vector.Min(sum, new Vector<int>(open.Cap, at)) & matters;
                key = key * 1_000_003 + room;
            }
            (Settled, Guess, _key) = (settled, guess, key);
        }
    }
}
