using System.Numerics;

namespace Practice.Planner.Course;

/// <summary>
/// The ways in which a course can begin, one offer further. Two that leave the same room in every open row are one: the
/// cheaper stays. Of the others the most promising are kept, in the order in which they came.
/// </summary>
internal sealed class Beginnings(int most)
{
    private readonly int[] _twins = new int[BitOperations.RoundUpToPowerOf2(2 * (uint)most)];
    private readonly float[] _scores = new float[most];
    private readonly float[] _settled = new float[most];
    private readonly ulong[] _keys = new ulong[most];
    private readonly int[] _parents = new int[most];
    private readonly byte[] _counts = new byte[most];
    private readonly float[] _ranked = new float[most];
    private int _number;

    public void Clear()
    {
        _number = 0;
        Array.Fill(_twins, -1);
    }

    /// <summary>Notes one.</summary>
    /// <param name="score">What it will cost, as far as one can guess.</param>
    /// <param name="settled">What it costs already.</param>
    /// <param name="key">The same for the same room.</param>
    /// <param name="parent">What it goes on from.</param>
    /// <param name="count">How many of the offer it takes.</param>
    public void Add(float score, float settled, ulong key, int parent, byte count)
    {
        var slot = (int)key & (_twins.Length - 1);
        while (_twins[slot] >= 0 && _keys[_twins[slot]] != key)
            slot = (slot + 1) & (_twins.Length - 1);
        var at = _twins[slot];
        if (at >= 0 && settled >= _settled[at])
            return;
        if (at < 0)
            at = _twins[slot] = _number++;
        (_scores[at], _settled[at], _keys[at]) = (score, settled, key);
        (_parents[at], _counts[at]) = (parent, count);
    }

    /// <summary>The most promising; all of them where there is room.</summary>
    public Kept Best(int width)
    {
        var kept = new Kept(Math.Min(width, _number), _number > width);
        var bound = kept.LeftSomeOut ? Ranked(width - 1) : float.MaxValue;
        var ties = kept.Settled.Length;
        for (var i = 0; i < _number; i++)
            ties -= _scores[i] < bound ? 1 : 0;
        for (var (i, at) = (0, 0); i < _number; i++)
            if (_scores[i] < bound || (_scores[i] == bound && ties-- > 0))
            {
                (kept.Settled[at], kept.Parents[at], kept.Counts[at]) = (
                    _settled[i],
                    _parents[i],
                    _counts[i]
                );
                at++;
            }
        return kept;
    }

    // Hoare's selection: the score at a rank without sorting them all
    private float Ranked(int rank)
    {
        var scores = _ranked.AsSpan(0, _number);
        _scores.AsSpan(0, _number).CopyTo(scores);
        for (var (from, to) = (0, _number - 1); from < to; )
        {
            var pivot = scores[(from + to) / 2];
            var (low, high) = (from, to);
            while (low <= high)
            {
                while (scores[low] < pivot)
                    low++;
                while (scores[high] > pivot)
                    high--;
                if (low > high)
                    break;
                (scores[low], scores[high]) = (scores[high], scores[low]);
                low++;
                high--;
            }
            if (rank <= high)
                to = high;
            else if (rank >= low)
                from = low;
            else
                break;
        }
        return scores[rank];
    }

    /// <summary>What was kept at one offer.</summary>
    /// <param name="number">How many.</param>
    /// <param name="leftSomeOut">Whether there was no room for others.</param>
    internal sealed class Kept(int number, bool leftSomeOut)
    {
        public bool LeftSomeOut { get; } = leftSomeOut;
        public float[] Settled { get; } = new float[number];
        public int[] Parents { get; } = new int[number];
        public byte[] Counts { get; } = new byte[number];
    }
}
