using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Course;
using Practice.Planner.Model;

namespace Practice.Planner.Course;

/// <summary>
/// The course as a question in whole numbers: how many of each offer. Ceilings and supply are hard rows, wishes are rows
/// at a price, and every row is a sum over the counts alone. What locked steps bring is counted into the bounds; where
/// they break a ceiling by themselves, nothing is added on top.
/// </summary>
internal sealed class CourseModel
{
    private readonly List<Row> _rows = [];
    private readonly long[] _costs;

    public CourseModel(CourseCase course, CourseRelaxation relaxed = CourseRelaxation.None)
    {
        Course = course;
        Relaxed = relaxed;
        Targets = CourseTargets.For(course);
        Pace = course.Pace;
        Offers = CourseOffers.For(course, Pace);
        Locked =
        [
            .. course
                .Sheet.Steps.Where(s => s.Locked)
                .Select(s => s with { Elapsed = Pace.At(s.Km) }),
        ];
        _costs = new long[Offers.Length];
        Ceilings.Add(this);
        Supplies.Add(this);
        Wishes.Add(this);
    }

    public CourseCase Course { get; }
    public CourseRelaxation Relaxed { get; }
    public CourseTargets Targets { get; }
    public PaceLine Pace { get; }
    public ImmutableArray<Offer> Offers { get; }
    public ImmutableArray<CourseStep> Locked { get; }
    public IReadOnlyList<Row> Rows => _rows;
    public IReadOnlyList<long> Costs => _costs;

    public long CostOf(long[] counts)
    {
        long cost = 0;
        for (var i = 0; i < counts.Length; i++)
            cost += _costs[i] * counts[i];
        foreach (var row in _rows)
            cost += row.CostOf(row.SumOf(counts));
        return cost;
    }

    /// <summary>The steps of an answer, locked ones as they were.</summary>
    public CourseSchedule ScheduleOf(long[] counts, bool isProven = false)
    {
        var steps = Locked.ToList();
        var id = CourseEdits.NextId(Course.Sheet.Steps);
        for (var i = 0; i < counts.Length; i++)
            if (counts[i] > 0)
                steps.Add(Offers[i].Take((int)counts[i], id++));
        return new CourseSchedule(
            [.. steps.OrderBy(s => s.Km).ThenBy(s => s.Ml > 0).ThenBy(s => s.Id)],
            CostOf(counts),
            isProven
        );
    }

    /// <summary>Places of the offers that pass.</summary>
    public IEnumerable<int> Places(Func<Offer, bool> which)
    {
        for (var i = 0; i < Offers.Length; i++)
            if (which(Offers[i]))
                yield return i;
    }

    /// <summary>Places of the offers of a span, its beginning in and its end out.</summary>
    public IEnumerable<int> Within(double from, double to) =>
        Places(o => o.Minute >= from && o.Minute < to);

    /// <summary>What locked steps bring in a span.</summary>
    public decimal LockedWithin(double from, double to, Func<CourseStep, decimal> amount) =>
        Locked
            .Where(s => s.Elapsed.TotalMinutes >= from && s.Elapsed.TotalMinutes < to)
            .Sum(amount);

    public decimal LockedInAll(Func<CourseStep, decimal> amount) => Locked.Sum(amount);

    public void Charge(int offer, long cost) => _costs[offer] += cost;

    /// <summary>A sum that must keep to its bounds.</summary>
    public void Hard(
        IEnumerable<int> offers,
        Func<Offer, long> amount,
        long low = -Row.Unbounded,
        long high = Row.Unbounded
    ) => Add(offers, amount, low, high, price: null, step: 1);

    /// <summary>A sum that should keep to its bounds, at a price for each step outside.</summary>
    public void Soft(
        IEnumerable<int> offers,
        Func<Offer, long> amount,
        long low,
        long high,
        long step,
        long price
    ) => Add(offers, amount, low, high, price, step);

    private void Add(
        IEnumerable<int> offers,
        Func<Offer, long> amount,
        long low,
        long high,
        long? price,
        long step
    )
    {
        var terms = offers
            .Select(i => (Place: i, Amount: amount(Offers[i])))
            .Where(t => t.Amount != 0)
            .ToList();
        Add(
            [.. terms.Select(t => t.Place)],
            [.. terms.Select(t => t.Amount)],
            low,
            high,
            price,
            step
        );
    }

    /// <summary>A row over given offers; left out where nothing can break it.</summary>
    public void Add(
        int[] places,
        long[] amounts,
        long low,
        long high,
        long? price = null,
        long step = 1
    )
    {
        long least = 0,
            most = 0;
        for (var i = 0; i < places.Length; i++)
        {
            var reach = amounts[i] * Offers[places[i]].Most;
            least += Math.Min(0, reach);
            most += Math.Max(0, reach);
        }
        // nothing can break it, or nothing on offer can mend it
        if (places.Length == 0 || (least >= low && most <= high))
            return;
        _rows.Add(
            new Row
            {
                Variables = places,
                Coefficients = amounts,
                Low = low,
                High = high,
                Price = price,
                Step = step,
                Plate = -1,
            }
        );
    }
}

/// <summary>A limit left out to see what stands in the way.</summary>
internal enum CourseRelaxation
{
    /// <summary>All limits hold.</summary>
    None,

    /// <summary>As much as one likes is carried.</summary>
    Carry,

    /// <summary>Gels and bars go without their water.</summary>
    WaterWithFood,

    /// <summary>Glucose and fructose without ceiling.</summary>
    Sugars,

    /// <summary>Drinking without ceiling.</summary>
    Fluid,

    /// <summary>Strength of 40 min costs nothing.</summary>
    Strength,
}
