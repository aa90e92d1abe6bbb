using System.Collections.Immutable;
using Practice.Domain.Plans;
using Practice.Planner.Model;
using Practice.Planner.Search;

namespace Practice.Planner.Conflicts;

/// <summary>
/// Which single limit would resolve a clash if it gave way, by how much a menu was found to need and how much every menu
/// needs. Offered in the order in which a dietitian would try them; what screening set is never offered.
/// </summary>
internal sealed class Repairs(
    LimitQuestion question,
    IReadOnlyCollection<LimitKind> clash,
    CancellationToken cancel
)
{
    private static readonly ImmutableArray<LimitKind> Order =
    [
        LimitKind.Variety,
        LimitKind.DrinksShare,
        LimitKind.OccasionCarbohydrate,
        LimitKind.Fibre,
        LimitKind.SugaryShare,
        LimitKind.OccasionWeight,
        LimitKind.Sodium,
        LimitKind.Fat,
        LimitKind.ProteinCeiling,
        LimitKind.ProteinFloor,
        LimitKind.DayCarbohydrate,
    ];

    // more than this to choose from only costs time
    private const int Most = 3;

    public ImmutableArray<Relaxation> InOrder() =>
        [.. Order.Where(clash.Contains).Select(Alone).OfType<Relaxation>().Take(Most)];

    /// <summary>What the closest menu would need, all of it together: an offer where no single change was found.</summary>
    public static ImmutableArray<Relaxation> Of(LimitQuestion question, long[] closest) =>
        [
            .. Order
                .Intersect(question.MissedBy(closest))
                .Select(kind => RelaxationWords.Of(question, kind, closest, least: null))
                .OfType<Relaxation>(),
        ];

    private Relaxation? Alone(LimitKind kind)
    {
        if (cancel.IsCancellationRequested)
            return null;
        var partial = question.With(row => PriceIn(kind, row));
        if (LinearBound.Of(partial.Model) is not { } least)
            return null;
        var answer = Solver.Solve(partial.Model, Effort.Step, cancel);
        return answer.Values is null
            ? null
            : RelaxationWords.Of(question, kind, partial.Merge(answer.Values), least);
    }

    // what is eaten at each sitting may move freely when the day's carbohydrate itself gives way
    private static long? PriceIn(LimitKind relaxed, Row row) =>
        row.Limit!.Kind == relaxed ? 1
        : relaxed == LimitKind.DayCarbohydrate && row.Limit.Kind == LimitKind.OccasionCarbohydrate
            ? 0
        : null;
}
