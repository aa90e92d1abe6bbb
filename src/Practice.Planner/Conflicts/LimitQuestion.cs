using Practice.Domain.Plans;
using Practice.Planner.Model;
using Practice.Planner.Search;

namespace Practice.Planner.Conflicts;

/// <summary>Whether a day's limits can be kept at all, wishes left aside.</summary>
internal sealed class LimitQuestion
{
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

    /// <summary>Limits that no menu keeps together, none of them to spare as far as was found; null when not proven.</summary>
    public IReadOnlyCollection<LimitKind>? Clash(CancellationToken cancel)
    {
        if (CoreOf([.. _limits.Select(k => k.Key)], Effort.Day, cancel) is not { } core)
            return null;
        foreach (var kind in core.ToList())
        {
            if (!core.Contains(kind) || core.Count == 1)
                continue;
            if (CoreOf([.. core.Where(k => k != kind)], Effort.Step, cancel) is { } smaller)
                core = smaller;
        }
        return core;
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

    private List<LimitKind>? CoreOf(List<LimitKind> kinds, Effort effort, CancellationToken cancel)
    {
        var partial = new PartialModel(Model, _hint, _sense);
        var literals = kinds.ToDictionary(kind => partial.Assume(_limits[kind]));
        var answer = Solver.Solve(partial.Model, effort, cancel);
        return answer.IsImpossible ? [.. answer.Core.Select(literal => literals[literal])] : null;
    }
}
