using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Plans;
using Practice.Planner.Checking;
using Practice.Planner.Model;
using Practice.Planner.Search;

namespace Practice.Planner.Editing;

/// <summary>
/// Brings one day back within its limits after an edit: the exact model of that day, in which each change of what stands
/// has a price above every wish and below every limit.
/// </summary>
internal static class DayRebalance
{
    // Food (1000) is one more food on a plate
    private const long LineGoesOrComes = 30_000;
    private const long OtherPattern = 60_000;
    private const long OneStep = 2_000;
    private const long OneStepPerGram = 80;

    // a gram short at a sitting is dearer than a food that comes or goes
    private const long LimitsWeigh = 10;

    public static Rebalanced Of(MenuRequest request, LocalDate date, CancellationToken cancel)
    {
        var alone = request with { Days = [request.Days.Single(d => d.Date == date)] };
        var model = MenuModel.ToEdit(alone);
        var present = PresentMenu.ValuesIn(model);
        long[] prices = [.. model.Costs];
        var rules = model
            .Rows.Where(r => r.IsSense || r.IsLink || r.Limit is not null)
            .Select(r => r.Limit is null ? r : r.Priced(LimitsWeigh * r.Price))
            .ToList();
        var others = model.Rows.Count;
        ChargeForChange(model, present);
        StayNearTheAim(model);

        // the many small wishes of a fresh menu would only slow the search for the least change
        rules.AddRange(model.Rows.Skip(others));
        var near = new NearbyDay(model, rules, prices, present).Find(cancel);
        var whole = new PartialModel(
            model,
            near,
            [.. model.Plates.Select(p => p.Index)],
            rules,
            model.Costs,
            leavesOutLastResorts: true
        );
        whole.AtMost(CostOf(near));
        var answer = Solver.Solve(whole.Model, Effort.Rebalance, cancel);
        var values = answer.Values is { } found ? whole.Merge(found) : near;
        var days = MenuWriter.Write(model, values);
        return new Rebalanced(
            days[0],
            Changes(alone.Days[0], days[0]),
            [.. MenuCheck.NoLongerServed(alone), .. MenuCheck.Of(alone with { Days = days })],
            answer.IsProven
        );

        long CostOf(long[] values) =>
            rules.Sum(r => r.CostOf(r.SumOf(values)))
            + values.Index().Sum(v => v.Item * model.Costs[v.Index]);
    }

    private static void ChargeForChange(MenuModel model, long[] present)
    {
        foreach (var plate in model.Plates)
        {
            foreach (var candidate in plate.Candidates.Where(c => !c.IsLocked))
            {
                var steps = present[candidate.Amount];
                model.Charge(candidate.Present, steps > 0 ? -LineGoesOrComes : LineGoesOrComes);
                if (steps > 0)
                    model.Prefer(
                        new Sum().Plus(candidate.Amount),
                        steps,
                        steps,
                        OneStep + OneStepPerGram * Math.Min(60, candidate.Item.Carbohydrate / 100),
                        "as it was"
                    );
            }
            foreach (var (_, chosen) in plate.Patterns)
                if (present[chosen] == 1)
                    model.Charge(chosen, -OtherPattern);
        }
    }

    private static void StayNearTheAim(MenuModel model)
    {
        var aim = (long)(model.Request.Days[0].Limits.CarbohydrateAimG * 100);
        model.Prefer(
            Sum.OfAmounts(model.Plates, i => i.Carbohydrate),
            aim,
            aim,
            Prices.OffAimOfDay,
            "near the aim of the day"
        );
    }

    private static ImmutableArray<PortionChange> Changes(PlanDay before, PlanDay after) =>
        [.. before.Occasions.SelectMany(o => Changes(o, after[o.Kind]))];

    private static IEnumerable<PortionChange> Changes(Occasion before, Occasion after)
    {
        foreach (var was in before.Portions)
            if (after.Find(was.FoodId) is not { } now)
                yield return new PortionChange(before.Kind, was, null);
            else if (now.Steps != was.Steps)
                yield return new PortionChange(before.Kind, was, now);
        foreach (var now in after.Portions)
            if (before.Find(now.FoodId) is null)
                yield return new PortionChange(before.Kind, null, now);
    }
}
