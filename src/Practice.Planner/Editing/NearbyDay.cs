using Practice.Planner.Model;
using Practice.Planner.Search;

namespace Practice.Planner.Editing;

/// <summary>
/// A day that keeps its limits with few changes, found by changing line after line and by moving single foods about:
/// where the exact search begins, and what it must beat.
/// </summary>
internal sealed class NearbyDay
{
    private const int Tries = 8;
    private const long BrokenSense = 200_000;
    private static readonly Cooling FromThePresentDay = new(
        40_000,
        30_000,
        1000,
        long.MaxValue / 4
    );

    private readonly MenuModel _model;
    private readonly Random _random;
    private readonly Table _table;
    private readonly Settling _settling;
    private long[] _best;
    private long _bestCost;

    /// <param name="model">The day, with its changes charged.</param>
    /// <param name="rows">The rows that count.</param>
    /// <param name="prices">What each variable costs when a change is not charged.</param>
    /// <param name="present">The day as it stands.</param>
    public NearbyDay(
        MenuModel model,
        IReadOnlyCollection<Row> rows,
        IReadOnlyList<long> prices,
        long[] present
    )
    {
        (_model, _random) = (model, new Random(model.Request.Seed));
        var score = Score.OfMenu(model, rows, BrokenSense);
        _table = new Table(model, score, [.. model.Plates.Select(p => MealOn(p, present))]);
        _settling = new Settling(model, _table, prices, _random);
        (_best, _bestCost) = (present, _table.Cost);
    }

    public long[] Find(CancellationToken cancel)
    {
        ChangeLineByLine(cancel);
        int[] plates = [.. _model.Plates.Select(p => p.Index)];
        for (var i = 0; i < Tries && !cancel.IsCancellationRequested; i++)
        {
            _table.TakeBack(0);
            var plate = plates[_random.Next(plates.Length)];
            _settling.Run(plate, plates, _table.Cost, FromThePresentDay, Remember);
        }
        return _best;
    }

    private void Remember()
    {
        if (_table.Cost < _bestCost && _table.MakesSense)
            (_best, _bestCost) = (_table.Values(), _table.Cost);
    }

    // the best single line to change, as long as one helps: after most edits one is enough
    private void ChangeLineByLine(CancellationToken cancel)
    {
        while (!cancel.IsCancellationRequested && BestChange() is var (plate, place, helping))
        {
            _table.Put(plate, place, helping);
            Remember();
        }
    }

    private (int Plate, int Place, Helping Helping)? BestChange()
    {
        var lowest = _table.Cost;
        (int, int, Helping)? found = null;
        foreach (var plate in _model.Plates)
        foreach (var place in _table.PlacesToChange(plate.Index))
        foreach (var helping in WhatCouldStandOn(plate, place))
        {
            var mark = _table.Mark;
            _table.Put(plate.Index, place, helping);
            if (_table.Cost < lowest)
                (lowest, found) = (_table.Cost, (plate.Index, place, helping));
            _table.TakeBack(mark);
        }
        return found;
    }

    private IEnumerable<Helping> WhatCouldStandOn(Plate plate, int place)
    {
        yield return default;
        var here = _table[plate.Index, place].Candidate;
        foreach (var candidate in plate.Candidates)
            if (ReferenceEquals(candidate, here) || !_table.Has(candidate))
                foreach (var steps in candidate.Servings)
                    yield return new Helping(candidate, steps);
    }

    private static Meal MealOn(Plate plate, long[] values) =>
        new(
            plate.Patterns.Single(p => values[p.Chosen] == 1),
            [
                .. plate
                    .Candidates.Where(c => values[c.Present] == 1)
                    .Select(c => new Helping(c, (int)values[c.Amount])),
            ],
            0
        );
}
