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
        var closest = MenuBuild.Begin(model, (_, _) => { }, cancel);
        closest.Run(2 * model.Plates.Count, (_, _) => { }, cancel);
        var question = new LimitQuestion(model, closest.Values);
        var misses = question.MissedBy(closest.Values);
        if (misses.Count == 0 || cancel.IsCancellationRequested)
            return null;

        var clash = question.Clash(cancel);
        if (clash is null)
            return null;
        var relaxations = new Repairs(question, clash, cancel).InOrder();
        return new MenuConflict(
            [.. clash.Order()],
            Proven: true,
            Words(request.Days[0], clash, misses, relaxations.IsEmpty),
            relaxations
        );
    }

    private static bool KeepsLimits(ImmutableArray<Shortfall> shortfalls) =>
        shortfalls.All(s => s.Kind == LimitKind.MealSense);

    private static string Words(
        PlanDay day,
        IReadOnlyCollection<LimitKind> clash,
        IReadOnlyCollection<LimitKind> misses,
        bool isUnsolved
    )
    {
        var names = clash.Order().Select(k => LimitWords.InASentence(k)).Distinct();
        var text =
            clash.Count == 1
                ? $"On {day.Date.DayOfWeek} no menu of these foods keeps the limit of {names.First()}."
                : $"On {day.Date.DayOfWeek} these cannot all be kept: {string.Join(", ", names)}.";
        return isUnsolved
            ? $"{text} No single change was found that resolves it; the closest menu misses {string.Join(", ", misses.Select(k => LimitWords.InASentence(k)).Distinct())}."
            : text;
    }
}
