namespace Practice.Planner.Course;

/// <summary>
/// Makes an answer better change by change: one more or one less, one thing for another nearby, food with its water,
/// other cups at some stations running, carried things a little earlier, later or as another kind. What comes out worse
/// is now and then gone on from, less and less as it cools. Hard rows hold throughout.
/// </summary>
internal sealed class CoursePolish
{
    private const double Nearby = 45;
    private const double WaterWithin = 5;

    // how much worse, in points of cost, is accepted about one time in three: at the beginning, at the end
    private const double Hot = 100;
    private const double Cold = 10;
    private const int RunsInTen = 3;

    private readonly CourseLedger _ledger;
    private readonly double[] _minutes;
    private readonly int[] _most;
    private readonly int[] _counts;
    private readonly int[][] _near;
    private readonly int[] _water;
    private readonly int[][] _kinds;
    private readonly int[] _cups;
    private readonly int[] _kind;
    private readonly int[] _place;
    private readonly int[][] _nearest;
    private readonly List<(int Offer, int By)> _change = [];
    private readonly long[] _best;
    private double _bestCost;
    private ulong _dice;

    public CoursePolish(CourseModel model, long[] start)
    {
        var offers = model.Offers;
        _minutes = [.. offers.Select(o => o.Minute)];
        _most = [.. offers.Select(o => o.Most)];
        _near = [.. _minutes.Select((at, i) => Within(Nearby, at).Where(j => j != i).ToArray())];
        _water =
        [
            .. offers.Select(o =>
                o.Product.WaterNeedMl == 0
                    ? -1
                    : Within(WaterWithin, o.Minute)
                        .Where(w => offers[w].IsWater)
                        .OrderBy(w => Math.Abs(_minutes[w] - o.Minute))
                        .FirstOrDefault(-1)
            ),
        ];
        _kinds =
        [
            .. model
                .Places(_ => true)
                .GroupBy(i => (offers[i].Product.Id, offers[i].Station is null))
                .Select(g => g.ToArray()),
        ];
        _cups =
        [
            .. Enumerable
                .Range(0, _kinds.Length)
                .Where(k => offers[_kinds[k][0]] is { Station: not null, Product.IsDrink: true }),
        ];
        (_kind, _place) = (new int[offers.Length], new int[offers.Length]);
        for (var k = 0; k < _kinds.Length; k++)
        for (var p = 0; p < _kinds[k].Length; p++)
            (_kind[_kinds[k][p]], _place[_kinds[k][p]]) = (k, p);
        _nearest =
        [
            .. _kinds.Select(kind =>
                _minutes
                    .Select(at =>
                        Enumerable
                            .Range(0, kind.Length)
                            .MinBy(p => Math.Abs(_minutes[kind[p]] - at))
                    )
                    .ToArray()
            ),
        ];
        _counts = [.. start.Select(c => (int)c)];
        _ledger = new CourseLedger(model);
        for (var i = 0; i < start.Length; i++)
            _ledger.Note(i, _counts[i]);
        _ledger.Price();
        _ledger.Keep();
        (_best, _bestCost) = ((long[])start.Clone(), model.CostOf(start));
    }

    /// <summary>Tries so many changes and gives the best counts met.</summary>
    /// <param name="changes">How many.</param>
    /// <param name="seed">The same seed, the same answer.</param>
    /// <param name="cancel">Ends it with the best so far.</param>
    public long[] Run(int changes, int seed, CancellationToken cancel)
    {
        _dice = 0x9E3779B97F4A7C15 * (ulong)(seed + 1);
        var (cost, warmth, cooling) = (_bestCost, Hot, Math.Pow(Cold / Hot, 1.0 / changes));
        for (var i = 0; i < changes && !cancel.IsCancellationRequested; i++)
        {
            warmth *= cooling;
            if (!(Roll(10) < RunsInTen ? ChangeRun() : ChangeOne()) || !IsTaken(warmth, ref cost))
                foreach (var (offer, by) in _change)
                    _counts[offer] -= by;
            _change.Clear();
            if (cost >= _bestCost)
                continue;
            _bestCost = cost;
            for (var o = 0; o < _counts.Length; o++)
                _best[o] = _counts[o];
        }
        return _best;
    }

    private bool IsTaken(double warmth, ref double cost)
    {
        foreach (var (offer, by) in _change)
            _ledger.Note(offer, by);
        var more = _ledger.Price();
        if (more > 0 && Roll(1 << 24) >= (1 << 24) * Math.Exp(-more / warmth))
        {
            _ledger.Drop();
            return false;
        }
        _ledger.Keep();
        cost += more;
        return true;
    }

    private bool ChangeOne()
    {
        var offer = Roll(_counts.Length);
        if (_counts[offer] == _most[offer] || (_counts[offer] > 0 && Roll(2) == 0))
            return TakeOut(offer);
        if (!PutIn(offer))
            return false;
        if (Roll(4) > 0)
            // mostly for something else nearby
            for (var tries = 0; tries < 8 && _near[offer].Length > 0; tries++)
                if (_near[offer][Roll(_near[offer].Length)] is var other && _counts[other] > 0)
                    return TakeOut(other);
        return true;
    }

    private bool ChangeRun()
    {
        var offer = Roll(_counts.Length);
        return Array.IndexOf(_cups, _kind[offer]) >= 0 ? ChangeCups(offer) : ChangeCarried(offer);
    }

    // a cup more or less at some stations running, perhaps for another drink there
    private bool ChangeCups(int offer)
    {
        var kind = _kinds[_kind[offer]];
        var other = Roll(2) == 0 ? _kind[offer] : _cups[Roll(_cups.Length)];
        var by = 2 * Roll(2) - 1;
        var end = Math.Min(kind.Length, _place[offer] + 2 + Roll(5));
        for (var p = _place[offer]; p < end; p++)
        {
            var beside = _kinds[other][_nearest[other][kind[p]]];
            if (beside != kind[p] && _minutes[beside] == _minutes[kind[p]])
                Put(beside, -by);
            Put(kind[p], by);
        }
        return _change.Count > 0;
    }

    // some things of a kind a place earlier or later, or as another kind
    private bool ChangeCarried(int offer)
    {
        var kind = _kinds[_kind[offer]];
        var other = Roll(3) == 0 ? Roll(_kinds.Length) : _kind[offer];
        var by = 2 * Roll(2) - 1;
        for (var (p, left) = (_place[offer], 1 + Roll(5)); p < kind.Length && left > 0; p++)
        {
            if (_counts[kind[p]] == 0)
                continue;
            left--;
            var to = other == _kind[offer] ? p + by : _nearest[other][kind[p]] + Roll(3) - 1;
            if (to >= 0 && to < _kinds[other].Length)
                if (!TakeOut(kind[p]) || !PutIn(_kinds[other][to]))
                    return false;
        }
        return _change.Count > 0;
    }

    private bool PutIn(int offer) =>
        (_water[offer] < 0 || Roll(2) == 0 || Put(_water[offer], 1)) && Put(offer, 1);

    private bool TakeOut(int offer) =>
        Put(offer, -1) && (_water[offer] < 0 || Roll(2) == 0 || Put(_water[offer], -1));

    private bool Put(int offer, int by)
    {
        var count = _counts[offer] + by;
        if (count < 0 || count > _most[offer])
            return false;
        _counts[offer] = count;
        _change.Add((offer, by));
        return true;
    }

    // Marsaglia's xorshift: dice are thrown some times a change
    private int Roll(int sides)
    {
        _dice ^= _dice << 13;
        _dice ^= _dice >> 7;
        _dice ^= _dice << 17;
        return (int)(((_dice >> 32) * (ulong)sides) >> 32);
    }

    private IEnumerable<int> Within(double minutes, double of)
    {
        for (var i = 0; i < _minutes.Length; i++)
            if (Math.Abs(_minutes[i] - of) <= minutes)
                yield return i;
    }
}
