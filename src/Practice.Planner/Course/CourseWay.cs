using System.Collections.Immutable;
using System.Numerics;
using Practice.Planner.Model;

namespace Practice.Planner.Course;

/// <summary>
/// The question as one meets it on the way along the course, from the start or from the finish. Rows stand in the order
/// in which they are met, so that those open at the same time lie side by side and a whole vector of them is read at
/// once; the few that span more than an hour stand behind all others.
/// </summary>
internal sealed class CourseWay
{
    private const double AnHour = 60;

    public CourseWay(CourseModel model, bool fromFinish)
    {
        FromFinish = fromFinish;
        Offers = fromFinish ? [.. model.Offers.Reverse()] : model.Offers;
        Costs = fromFinish ? [.. model.Costs.Reverse()] : model.Costs;
        var rows = model
            .Rows.Select(r => fromFinish ? r.Over(i => Offers.Length - 1 - i) : r)
            .Select(r => (Row: r, First: r.Variables.Min(), Last: r.Variables.Max()))
            .ToList();
        var isLong = rows.ToLookup(r => MinutesBetween(r.First, r.Last) > AnHour);
        LongFrom = Padded(isLong[false].Count());
        Length = LongFrom + Padded(isLong[true].Count());
        (Rows, First, Last) = (new Row?[Length], new int[Length], new int[Length]);
        Array.Fill(Last, -1);
        Touches = [.. Offers.Select(_ => new List<(int, long)>())];
        Stand(isLong[false].OrderBy(r => r.First), 0);
        Stand(isLong[true], LongFrom);
    }

    /// <summary>How many rows a vector holds.</summary>
    public static int Lanes { get; } = Vector<int>.Count;

    public bool FromFinish { get; }

    /// <summary>What is offered, in the order in which it is met.</summary>
    public ImmutableArray<Offer> Offers { get; }

    /// <summary>What one of each costs by itself.</summary>
    public IReadOnlyList<long> Costs { get; }

    /// <summary>The rows; none where vectors are filled up.</summary>
    public Row?[] Rows { get; }

    /// <summary>Where the rows begin that span more than an hour.</summary>
    public int LongFrom { get; }

    public int Length { get; }

    /// <summary>The offer at which each row opens.</summary>
    public int[] First { get; }

    /// <summary>The offer at which each row closes.</summary>
    public int[] Last { get; }

    /// <summary>What one of each offer adds to which rows.</summary>
    public List<(int Row, long Amount)>[] Touches { get; }

    public static int Padded(int rows) => (rows + Lanes - 1) / Lanes * Lanes;

    public double MinutesBetween(int offer, int other) =>
        Math.Abs(Offers[other].Minute - Offers[offer].Minute);

    private void Stand(IEnumerable<(Row Row, int First, int Last)> rows, int at)
    {
        foreach (var (row, first, last) in rows)
        {
            (Rows[at], First[at], Last[at]) = (row, first, last);
            for (var i = 0; i < row.Variables.Length; i++)
                Touches[row.Variables[i]].Add((at, row.Coefficients[i]));
            at++;
        }
    }
}
