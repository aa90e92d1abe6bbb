using Practice.Planner.Model;

namespace Practice.Planner.Course;

/// <summary>
/// What the rows open at an offer ask of their sums: one stretch of the short rows, then all the long ones. A closing row
/// settles; a row that stays open is guessed from how far it has come, and no longer told apart where it can not cost
/// anything any more.
/// </summary>
/// <param name="from">First of the short rows.</param>
/// <param name="to">Behind the last of them.</param>
/// <param name="longs">Number of long rows, filled up to whole vectors.</param>
internal sealed class OpenRows(int from, int to, int longs)
{
    /// <summary>Price of a broken hard row, above all that can be wished for.</summary>
    public const float Forbidden = 1e9f;

    // no sum of a course comes near it, and three of it are still a whole number
    private const int Far = 1 << 29;

    public int From { get; } = from;
    public int To { get; } = to;

    /// <summary>Number of short rows.</summary>
    public int Near { get; } = to - from;

    /// <summary>What one of the offer adds.</summary>
    public int[] Amounts { get; } = new int[to - from + longs];

    public int[] Low { get; } = Filled(to - from + longs, -Far);
    public int[] High { get; } = Filled(to - from + longs, Far);
    public float[] Step { get; } = Filled(to - from + longs, 1f);

    /// <summary>Price of a step where the row closes.</summary>
    public float[] Settles { get; } = new float[to - from + longs];

    /// <summary>Price of a step where the row stays open.</summary>
    public float[] Guesses { get; } = new float[to - from + longs];

    /// <summary>From here to <see cref="FreeTo"/> nothing to come can make the row cost anything.</summary>
    public int[] FreeFrom { get; } = Filled(to - from + longs, -Far);
    public int[] FreeTo { get; } = Filled(to - from + longs, Far);

    /// <summary>Above this all sums end the same: a kind once taken stays taken.</summary>
    public int[] Cap { get; } = Filled(to - from + longs, Far);

    /// <summary>What is open at each offer of a way.</summary>
    public static OpenRows[] Along(CourseWay way)
    {
        var open = new OpenRows[way.Offers.Length];
        // what offers still ahead can add to a row at most and at least
        var (most, least) = (new long[way.Length], new long[way.Length]);
        for (var offer = open.Length - 1; offer >= 0; offer--)
        {
            var next = offer + 1 < open.Length ? open[offer + 1] : null;
            var rows = open[offer] = At(offer, way, next?.From ?? 0);
            for (var at = 0; at < rows.Amounts.Length; at++)
                if (rows.RowAt(at, way) is var r && way.First[r] <= offer && way.Last[r] >= offer)
                    rows.Ask(at, way.Rows[r]!, way.Last[r] == offer, Come(r), most[r], least[r]);
            foreach (var (r, amount) in way.Touches[offer])
            {
                rows.Amounts[rows.PlaceOf(r, way)] += (int)amount;
                most[r] += Math.Max(0, amount * way.Offers[offer].Most);
                least[r] += Math.Min(0, amount * way.Offers[offer].Most);
            }

            double Come(int r) =>
                way.MinutesBetween(way.First[r], way.Last[r]) is > 0 and var whole
                    ? way.MinutesBetween(way.First[r], offer) / whole
                    : 1;
        }
        return open;
    }

    // rows stand as they open: those open at once are a stretch, with a few in it that have closed before others
    private static OpenRows At(int offer, CourseWay way, int otherwise)
    {
        var (from, to) = (int.MaxValue, 0);
        for (var r = 0; r < way.LongFrom; r++)
            if (way.First[r] <= offer && way.Last[r] >= offer)
                (from, to) = (Math.Min(from, r), r + 1);
        return to == 0
            ? new OpenRows(otherwise, otherwise, way.Length - way.LongFrom)
            : new OpenRows(
                from / CourseWay.Lanes * CourseWay.Lanes,
                CourseWay.Padded(to),
                way.Length - way.LongFrom
            );
    }

    private int RowAt(int place, CourseWay way) =>
        place < Near ? From + place : way.LongFrom + place - Near;

    private int PlaceOf(int row, CourseWay way) =>
        row < way.LongFrom ? row - From : row - way.LongFrom + Near;

    private void Ask(int at, Row row, bool closes, double come, long most, long least)
    {
        Step[at] = row.Step;
        var price = row.Price ?? Forbidden;
        if (closes)
        {
            (Low[at], High[at], Settles[at]) = (Bound(row.Low), Bound(row.High), price);
            return;
        }
        Guesses[at] = price;
        (FreeFrom[at], FreeTo[at]) = (Bound(row.Low - least), Bound(row.High - most));
        if (row.Step == int.MaxValue)
            Cap[at] = 1;
        if (row.IsHard)
            (Low[at], High[at]) = (Bound(row.Low - most), Bound(row.High - least));
        else
        {
            High[at] = Bound(row.High);
            // a part of what is wanted should have come by now
            if (row.Low != -Row.Unbounded)
                Low[at] = Bound(Math.Max(Math.Round(row.Low * come), row.Low - most));
        }
    }

    public static int Bound(double bound) => (int)Math.Clamp(bound, -Far, Far);

    private static T[] Filled<T>(int length, T value)
    {
        var filled = new T[length];
        Array.Fill(filled, value);
        return filled;
    }
}
