using System.Collections.Immutable;
using NodaTime;
using NodaTime.Text;
using Practice.Domain.Foods;
using Practice.Domain.Plans;
using Practice.Domain.Quantities;
using Practice.Domain.Targets;

namespace Practice.Domain.Rehearsals;

/// <summary>A target that differs between two plans.</summary>
/// <param name="Before">As it was; null when it is new.</param>
/// <param name="After">As it is; null when it is gone.</param>
public sealed record TargetChange(Target? Before, Target? After);

/// <summary>What differs on one day.</summary>
/// <param name="Date">The day.</param>
/// <param name="Changes">Portions added, removed and changed, in the order of the day.</param>
/// <param name="Before">Nutrients of the day as it was; zero where there was no such day.</param>
/// <param name="After">Nutrients of the day as it is; zero where there is none.</param>
public sealed record DayDiff(
    LocalDate Date,
    ImmutableArray<PortionChange> Changes,
    Nutrients Before,
    Nutrients After
);

/// <summary>
/// How two plans for one race differ, for a person to read: what was added, removed and changed, with the totals of
/// before and after. A lock is no difference.
/// </summary>
/// <param name="Targets">Targets that differ in aim or band.</param>
/// <param name="Days">Days that differ, in order.</param>
public sealed record PlanDiff(ImmutableArray<TargetChange> Targets, ImmutableArray<DayDiff> Days)
{
    /// <summary>Whether nothing differs.</summary>
    public bool IsEmpty => Targets.IsEmpty && Days.IsEmpty;

    /// <summary>Compares two plans, day by day of the calendar.</summary>
    public static PlanDiff Of(RaceWeekPlan before, RaceWeekPlan after)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        var (was, now) = (
            before.Days.ToDictionary(d => d.Date),
            after.Days.ToDictionary(d => d.Date)
        );
        var loading = was
            .Keys.Union(now.Keys)
            .Order()
            .Select(date => Of(date, was.GetValueOrDefault(date), now.GetValueOrDefault(date)));
        // race morning and recovery are of one date, and are not one day
        var race = after.Header.RaceStart.Date;
        return new(
            [.. Compare(before.Targets, after.Targets)],
            [
                .. loading
                    .Append(Of(race, before.Week?.Morning, after.Week?.Morning))
                    .Append(Of(race, before.Week?.Recovery, after.Week?.Recovery))
                    .Where(day => !day.Changes.IsEmpty),
            ]
        );
    }

    /// <summary>The difference in lines: targets first, then each day with its portions and its totals.</summary>
    /// <param name="units">Kitchen words of the reader.</param>
    public IEnumerable<string> Lines(HouseholdUnits units)
    {
        foreach (var target in Targets)
            yield return $"{(target.After ?? target.Before)!.Name}: {Words(target.Before)} → {Words(target.After)}";
        foreach (var day in Days)
        {
            var date = DayAndMonth.Format(day.Date);
            foreach (var change in day.Changes)
                yield return $"{date}, {change.Occasion.InWords()}: {Words(change, units)}";
            yield return $"{date}: carbohydrate {Grams(day.Before.CarbohydrateG, day.After.CarbohydrateG)}, "
                + $"fibre {Grams(day.Before.FibreG, day.After.FibreG)}, "
                + $"fat {Grams(day.Before.FatG, day.After.FatG)}, "
                + $"protein {Grams(day.Before.ProteinG, day.After.ProteinG)}";
        }
    }

    private static readonly LocalDatePattern DayAndMonth =
        LocalDatePattern.CreateWithInvariantCulture("dddd d MMMM");

    private static DayDiff Of(LocalDate date, PlanDay? before, PlanDay? after) =>
        new(
            date,
            [
                .. Enum.GetValues<OccasionKind>()
                    .SelectMany(kind => Compare(kind, Plate(before, kind), Plate(after, kind))),
            ],
            before?.Totals ?? Nutrients.Zero,
            after?.Totals ?? Nutrients.Zero
        );

    private static ImmutableArray<Portion> Plate(PlanDay? day, OccasionKind kind) =>
        day?.Occasions.FirstOrDefault(o => o.Kind == kind)?.Portions ?? [];

    private static IEnumerable<PortionChange> Compare(
        OccasionKind kind,
        ImmutableArray<Portion> before,
        ImmutableArray<Portion> after
    )
    {
        var (was, now) = (before.ToDictionary(p => p.FoodId), after.ToDictionary(p => p.FoodId));
        return before
            .Concat(after)
            .Select(p => p.FoodId)
            .Distinct()
            .Select(food => (Was: was.GetValueOrDefault(food), Now: now.GetValueOrDefault(food)))
            .Where(p => p.Was?.Grams != p.Now?.Grams)
            .Select(p => new PortionChange(kind, p.Was, p.Now));
    }

    private static IEnumerable<TargetChange> Compare(LoadingTargets before, LoadingTargets after)
    {
        var (was, now) = (before.All.ToDictionary(t => t.Key), after.All.ToDictionary(t => t.Key));
        return was
            .Keys.Union(now.Keys)
            .Select(key => new TargetChange(was.GetValueOrDefault(key), now.GetValueOrDefault(key)))
            .Where(t => Numbers(t.Before) != Numbers(t.After));
    }

    private static (decimal?, decimal?, decimal?) Numbers(Target? target) =>
        (target?.Aim, target?.Low, target?.High);

    private static string Words(Target? target) =>
        target is null ? TargetWords.None : TargetWords.Aim(target);

    private static string Words(PortionChange change, HouseholdUnits units) =>
        change switch
        {
            { Before: null, After: { } added } =>
                $"{added.Name} added, {PortionWords.Full(added, units)}",
            { Before: { } removed, After: null } =>
                $"{removed.Name} removed, {PortionWords.Full(removed, units)}",
            { Before: { } was, After: { } now } =>
                $"{now.Name} {PortionWords.Full(was, units)} → {PortionWords.Full(now, units)}",
            _ => "",
        };

    private static string Grams(decimal before, decimal after) =>
        $"{Rounding.Shown(before, 0)} → {Rounding.Shown(after, 0)} g";
}
