using NodaTime;
using Practice.Domain.Foods;
using Practice.Domain.Plans;
using Practice.Planner.Model;

namespace Practice.Planner.Editing;

/// <summary>What would come of an edit.</summary>
/// <param name="Cost">What the day would cost more than it does.</param>
/// <param name="PushedOver">A limit that would be missed, or missed by more; null when none.</param>
internal sealed record Trial(long Cost, LimitKind? PushedOver);

/// <summary>
/// One sitting of a present menu on which a food can be tried: whether the meal would still make sense, what the day
/// would cost, and which limit it would push over.
/// </summary>
internal sealed class PlateEdit
{
    private readonly MenuModel _model;
    private readonly long[] _present;
    private readonly long _presentCost;
    private readonly Row[] _sense;
    private readonly int[] _patterns;

    public PlateEdit(MenuRequest request, LocalDate date, OccasionKind kind)
    {
        _model = MenuModel.ToEdit(
            request with
            {
                Days = [request.Days.Single(d => d.Date == date)],
            }
        );
        Plate = _model.Plates.Single(p => p.Kind == kind);
        _present = PresentMenu.ValuesIn(_model);
        _presentCost = _model.CostOf(_present);
        _sense = [.. _model.Rows.Where(r => r.IsSense && r.Plate == Plate.Index)];
        IsAMeal =
            !Plate.Occasion.Portions.IsEmpty
            && Array.TrueForAll(_sense, r => Breach(r, _present) == 0);
        // the pattern followed now is tried first
        _patterns = [.. Plate.Patterns.Select(p => p.Chosen).OrderByDescending(p => _present[p])];
    }

    public Plate Plate { get; }

    /// <summary>Whether what is on the plate now is a meal.</summary>
    public bool IsAMeal { get; }

    public bool IsOnThePlate(Candidate candidate) => _present[candidate.Present] == 1;

    /// <summary>Tries a food; null when the meal would make less sense than it does, by any pattern.</summary>
    /// <param name="goes">What is taken off; null for nothing.</param>
    /// <param name="comes">What is put on.</param>
    /// <param name="steps">How much of it.</param>
    public Trial? Try(Candidate? goes, Candidate comes, int steps)
    {
        var values = (long[])_present.Clone();
        if (goes is not null)
            values[goes.Present] = values[goes.Amount] = 0;
        values[comes.Present] = 1;
        values[comes.Amount] = steps;
        foreach (var pattern in _patterns)
        {
            foreach (var other in _patterns)
                values[other] = other == pattern ? 1 : 0;
            if (MakesSense(values))
                return new Trial(_model.CostOf(values) - _presentCost, PushedOver(values));
        }
        return null;
    }

    // a meal that is not finished yet may go on lacking something, as long as nothing is too much
    private bool MakesSense(long[] values) =>
        Array.TrueForAll(
            _sense,
            row =>
                Breach(row, values) <= Breach(row, _present)
                || (!IsAMeal && row.SumOf(values) < row.Low)
        );

    private LimitKind? PushedOver(long[] values) =>
        _model
            .Rows.FirstOrDefault(r =>
                r.Limit is not null && Breach(r, values) > Breach(r, _present)
            )
            ?.Limit?.Kind;

    private static long Breach(Row row, long[] values) => row.Excess(row.SumOf(values));
}
