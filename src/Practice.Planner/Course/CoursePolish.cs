using Practice.Planner.Model;

namespace Practice.Planner.Course;

/// <summary>
/// Makes an answer better by hand: one more or one less, one thing for another nearby, food with its water, until no
/// such change helps; then shakes a stretch of the course and tries again. Hard rows hold throughout.
/// </summary>
internal sealed class CoursePolish
{
    private const double Nearby = 45;
    private const double Shaken = 50;
    private const double Around = 70;
    private const double Warmth = 40;
    private const int LookAround = 25;

    private readonly CourseModel _model;
    private readonly Price[] _prices;
    private readonly int[] _most;
    private readonly (int Row, long Amount)[][] _touches;
    private readonly long[] _counts;
    private readonly long[] _sums;
    private readonly int[][] _near;
    private readonly int[] _water;
    private readonly int[] _everywhere;
    private readonly int[][] _around;

    public CoursePolish(CourseModel model, long[] start)
    {
        _model = model;
        _prices = [.. model.Rows.Select(r => new Price(r))];
        _most = [.. model.Offers.Select(o => o.Most)];
        _touches = TouchesOf(model);
        _near = Within(Nearby);
        _around = Within(Around);
        _everywhere = [.. model.Places(_ => true)];
        _water = [.. model.Offers.Select(WaterOf)];
        _counts = new long[start.Length];
        _sums = new long[_prices.Length];
        Cost = model.CostOf(_counts);
        for (var i = 0; i < start.Length; i++)
            Put(i, (int)start[i]);
        Best = (long[])start.Clone();
        BestCost = Cost;
    }

    public long[] Best { get; private set; }

    public long BestCost { get; private set; }

    private long Cost { get; set; }

    /// <summary>Shakes and mends so often. What comes out worse is gone on from less and less often.</summary>
    /// <param name="shakes">How often.</param>
    /// <param name="seed">The same seed, the same answer.</param>
    /// <param name="onBetter">Told of each answer better than all before.</param>
    /// <param name="cancel">Ends it with the best so far.</param>
    public void Run(int shakes, int seed, Action<long[]> onBetter, CancellationToken cancel)
    {
        var random = new Random(seed);
        Descend(_everywhere);
        Keep();
        onBetter(Best);
        var (here, cost) = ((long[])Best.Clone(), Cost);
        for (var i = 1; i <= shakes && !cancel.IsCancellationRequested; i++)
        {
            var offer = random.Next(_counts.Length);
            Shake(random, offer);
            Descend(_around[offer]);
            if (i % LookAround == 0)
                Descend(_everywhere);
            if (Cost < BestCost)
            {
                Keep();
                onBetter(Best);
            }
            var warmth = Warmth * (shakes - i + 1) / shakes;
            if (Cost <= cost || random.NextDouble() < Math.Exp((cost - Cost) / warmth))
            {
                cost = Cost;
                _counts.CopyTo(here, 0);
            }
            else
                GoBackTo(here);
        }
    }

    private void Keep()
    {
        BestCost = Cost;
        _counts.CopyTo(Best, 0);
    }

    private void GoBackTo(long[] counts)
    {
        for (var i = 0; i < _counts.Length; i++)
            if (_counts[i] != counts[i])
                Put(i, (int)(counts[i] - _counts[i]));
    }

    /// <summary>Takes away what lies on a stretch, or some of it, and puts something else there.</summary>
    private void Shake(Random random, int offer)
    {
        var middle = _model.Offers[offer].Minute;
        foreach (
            var i in _model.Within(middle - Shaken / 2, middle + Shaken / 2).Reverse().ToList()
        )
            if (_counts[i] > 0 && random.Next(3) > 0)
                TryPut([(i, -(int)_counts[i])]);
        for (var tries = 0; tries < 3; tries++)
        {
            var place = _near[offer][random.Next(_near[offer].Length)];
            if (_water[place] >= 0)
                TryPut([(_water[place], 1), (place, 1)]);
            else
                TryPut([(place, 1)]);
        }
    }

    private void Descend(int[] places)
    {
        for (var better = true; better; )
        {
            better = false;
            foreach (var i in places)
            {
                better |= Improve([(i, 1)]) || Improve([(i, -1)]);
                var w = _water[i];
                if (w >= 0)
                    better |= Improve([(w, 1), (i, 1)]) || Improve([(i, -1), (w, -1)]);
                if (_counts[i] == 0)
                    continue;
                foreach (var j in _near[i])
                    if (j != i && _counts[i] > 0)
                        better |=
                            Improve([(i, -1), (j, 1)])
                            || _water[j] >= 0 && Improve([(i, -1), (_water[j], 1), (j, 1)])
                            || w >= 0 && Improve([(i, -1), (w, -1), (j, 1)]);
            }
        }
    }

    private bool Improve(ReadOnlySpan<(int Place, int By)> move) => TryPut(move, below: Cost);

    /// <summary>Makes a change where counts and hard rows allow it and it costs less than a bound.</summary>
    private bool TryPut(ReadOnlySpan<(int Place, int By)> move, long below = long.MaxValue)
    {
        var made = 0;
        foreach (var (place, by) in move)
        {
            if (_counts[place] + by < 0 || _counts[place] + by > _most[place])
                break;
            Put(place, by);
            made++;
        }
        if (made == move.Length && Cost < below && Cost < Row.Forbidden)
            return true;
        for (var i = made - 1; i >= 0; i--)
            Put(move[i].Place, -move[i].By);
        return false;
    }

    private void Put(int place, int by)
    {
        if (by == 0)
            return;
        _counts[place] += by;
        var cost = Cost + by * _model.Costs[place];
        foreach (var (row, amount) in _touches[place])
        {
            ref readonly var price = ref _prices[row];
            var before = _sums[row];
            var after = before + by * amount;
            _sums[row] = after;
            cost += price.Of(after) - price.Of(before);
        }
        Cost = cost;
    }

    /// <summary>What a row asks and costs, side by side in memory: it is read millions of times.</summary>
    private readonly struct Price(Row row)
    {
        private readonly long _low = row.Low;
        private readonly long _high = row.High;
        private readonly long _step = row.Step;
        private readonly long _price = row.Price ?? 0;
        private readonly bool _isHard = row.IsHard;

        public long Of(long sum)
        {
            var over =
                sum > _high ? sum - _high
                : sum < _low ? _low - sum
                : 0;
            if (over == 0)
                return 0;
            if (_isHard)
                return Row.Forbidden + over;
            return _step == 1 ? over * _price : (over + _step - 1) / _step * _price;
        }
    }

    private int[][] Within(double minutes) =>
        [
            .. _model.Offers.Select(o =>
                _model.Places(p => Math.Abs(p.Minute - o.Minute) <= minutes).ToArray()
            ),
        ];

    private int WaterOf(Offer offer) =>
        offer.Product.WaterNeedMl == 0
            ? -1
            : _model
                .Places(w => w.IsWater && Math.Abs(w.Minute - offer.Minute) <= 5)
                .OrderBy(w => Math.Abs(_model.Offers[w].Minute - offer.Minute))
                .Select(w => (int?)w)
                .FirstOrDefault()
                ?? -1;

    private static (int, long)[][] TouchesOf(CourseModel model)
    {
        var touches = new List<(int, long)>[model.Offers.Length];
        for (var i = 0; i < touches.Length; i++)
            touches[i] = [];
        for (var r = 0; r < model.Rows.Count; r++)
        for (var i = 0; i < model.Rows[r].Variables.Length; i++)
            touches[model.Rows[r].Variables[i]].Add((r, model.Rows[r].Coefficients[i]));
        return [.. touches.Select(t => t.ToArray())];
    }
}
