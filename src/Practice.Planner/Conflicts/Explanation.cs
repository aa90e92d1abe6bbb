using System.Collections.Immutable;
using Practice.Domain.Plans;
using Practice.Planner.Checking;
using Practice.Planner.Model;
using Practice.Planner.Search;

namespace Practice.Planner.Conflicts;

/// <summary>
/// Why no menu keeps all limits, day by day: which limits clash, proven, and what would resolve it. Days share no
/// limit, so each can be asked alone. What the solver could not settle in its time is never called impossible.
/// </summary>
internal static class Explanation
{
    public static ImmutableArray<MenuConflict> Of(MenuRequest request, CancellationToken cancel) =>
        [
            .. request
                .Days.Where(day => !day.Occasions.IsEmpty)
                .Select(day => OfDay(request with { Days = [day] }, cancel))
                .OfType<MenuConflict>(),
        ];

    private static MenuConflict? OfDay(MenuRequest request, CancellationToken cancel)
    {
        var hasMenu = request.Days[0].Occasions.All(o => !o.Portions.IsEmpty);
        if (hasMenu && KeepsLimits(MenuCheck.Of(request)))
            return null;

        var model = MenuModel.ToFill(request);
        var closest = MenuBuild.Begin(model, (_, _) => { }, cancel).Values;
        var question = new LimitQuestion(model, closest);
        var misses = question.MissedBy(closest);
        if (misses.Count == 0 || cancel.IsCancellationRequested)
            return null;

        var (canBeKept, clash) = question.Clash(cancel);
        if (canBeKept)
            return null;
        ImmutableArray<Relaxation> offers = clash is null
            ? []
            : new Repairs(question, clash, cancel).InOrder();
        if (cancel.IsCancellationRequested)
            return null;
        var text = Words(request.Days[0], clash);
        if (offers.IsEmpty)
        {
            offers = Repairs.Of(question, closest);
            text +=
                $" The closest menu misses {Names(misses)}"
                + (
                    offers.IsEmpty
                        ? "; no limit can be offered for it."
                        : ": what it needs can be allowed."
                );
        }
        return new MenuConflict(
            [.. (clash ?? misses).Order()],
            Proven: clash is not null,
            text,
            offers
        );
    }

    private static bool KeepsLimits(ImmutableArray<Shortfall> shortfalls) =>
        shortfalls.All(s => s.Kind == LimitKind.MealSense);

    private static string Words(PlanDay day, IReadOnlyCollection<LimitKind>? clash)
    {
        var on = $"On {day.Date.DayOfWeek}";
        return clash switch
        {
            null => $"{on} no menu was found that keeps all limits.",
            { Count: 1 } => $"{on} no menu of these foods keeps the limit of {Names(clash)}.",
            _ => $"{on} these cannot all be kept: {Names(clash)}.",
        };
    }

    private static string Names(IReadOnlyCollection<LimitKind> kinds) =>
        string.Join(", ", kinds.Order().Select(LimitWords.InASentence).Distinct());
}
