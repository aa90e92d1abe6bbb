using Practice.Domain.Plans;
using Practice.Planner.Model;
using Practice.Planner.Search;

namespace Practice.Planner.Conflicts;

/// <summary>What came of asking whether a day's limits can be kept together.</summary>
/// <param name="CanBeKept">Whether a menu was found that keeps them all.</param>
/// <param name="Clash">Limits that are proven to clash; null when nothing was proven.</param>
internal sealed record Finding(bool CanBeKept, IReadOnlyCollection<LimitKind>? Clash);

/// <summary>Whether a day's limits can be kept at all, wishes left aside.</summary>
internal sealed class LimitQuestion
{
    // steps of excess, far above what floating point could make up
    private const double SurelyMissed = 0.5;

    private readonly long[] _hint;
    private readonly Row[] _sense;
    private readonly ILookup<LimitKind, Row> _limits;

    public LimitQuestion(MenuModel model, long[] hint)
    {
        (Model, _hint) = (model, hint);
        _sense = [.. model.Rows.Where(r => r.IsHard)];
        _limits = model
            .Rows.Where(r => r.Limit is not null)
            .OrderBy(r => r.Limit!.Kind)
            .ToLookup(r => r.Limit!.Kind);
    }

    public MenuModel Model { get; }

    public IEnumerable<Row> RowsOf(LimitKind kind) => _limits[kind];

    public IReadOnlyCollection<LimitKind> MissedBy(long[] values) =>
        [
            .. _limits
                .Where(kind => kind.Any(r => r.CostOf(r.SumOf(values)) > 0))
                .Select(kind => kind.Key),
        ];

    /// <summary>Limits that no menu keeps together, as few as were found.</summary>
    public Finding Clash(CancellationToken cancel)
    {
        List<LimitKind> all = [.. _limits.Select(k => k.Key)];
        if (CannotEvenBeCutUp(all))
            return new Finding(
                false,
                Spared(all, kinds => CannotEvenBeCutUp(kinds) ? kinds : null)
            );
        var answer = Solver.Solve(With(_ => null).Model, Effort.Question, cancel);
        if (!answer.IsImpossible)
            return new Finding(answer.Values is not null, null);
        var core = CoreOf(all, cancel) ?? all;
        return new Finding(false, Spared(core, kinds => CoreOf(kinds, cancel)));

        // the linear relaxation settles most clashes in a fraction of the time
        bool CannotEvenBeCutUp(List<LimitKind> kinds) =>
            !cancel.IsCancellationRequested
            && LinearBound.Of(With(row => kinds.Contains(row.Limit!.Kind) ? 1 : 0).Model)
                is null
                    or > SurelyMissed;
    }

    // leaves out what can be left out
    private static List<LimitKind> Spared(
        List<LimitKind> clash,
        Func<List<LimitKind>, List<LimitKind>?> clashOf
    )
    {
        foreach (var kind in clash.ToList())
            if (clash.Count > 1 && clash.Contains(kind))
                clash = clashOf([.. clash.Where(k => k != kind)]) ?? clash;
        return clash;
    }

    /// <summary>The day with some limits free to be missed at a price and all others kept.</summary>
    /// <param name="elastic">Price of each step by which a row is missed; null keeps the row, 0 lets it go.</param>
    public PartialModel With(Func<Row, long?> elastic)
    {
        var limits =
            from row in _limits.SelectMany(k => k)
            let price = elastic(row)
            where price != 0
            select row.Priced(price);
        return new PartialModel(Model, _hint, _sense.Concat(limits));
    }

    private List<LimitKind>? CoreOf(List<LimitKind> kinds, CancellationToken cancel)
    {
        var partial = new PartialModel(Model, _hint, _sense);
        var literals = kinds.ToDictionary(kind => partial.Assume(_limits[kind]));
        var answer = Solver.Solve(partial.Model, Effort.Step, cancel);
        return answer.IsImpossible ? [.. answer.Core.Select(literal => literals[literal])] : null;
    }
}
