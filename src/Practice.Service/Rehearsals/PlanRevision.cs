using System.Collections.Immutable;
using Practice.Domain.Clients;
using Practice.Domain.Plans;
using Practice.Domain.Plans.Weeks;
using Practice.Domain.Rehearsals;
using Practice.Service.Plans;
using Practice.Service.Races;

namespace Practice.Service.Rehearsals;

/// <summary>
/// Makes the plan that accepted changes ask for: changed, then each day that is touched brought back within its limits.
/// </summary>
public sealed class PlanRevision(IMenuPlanner planner, Stove stove)
{
    /// <param name="raceCase">What the plan must respect today.</param>
    /// <param name="plan">The plan to change.</param>
    /// <param name="changes">What was accepted.</param>
    /// <param name="tastes">What the rehearsals taught.</param>
    /// <param name="cancel">Cancels.</param>
    internal Task<RaceWeekPlan> Make(
        RaceCase raceCase,
        RaceWeekPlan plan,
        ImmutableArray<PlanChange> changes,
        Tastes tastes,
        CancellationToken cancel
    )
    {
        var leftOut = changes.OfType<LeaveOutFood>().Select(c => c.FoodId).ToHashSet();
        var foods = raceCase.Foods;
        foods = foods with { Allowed = [.. foods.Allowed.Where(f => !leftOut.Contains(f.Id))] };
        return stove.Run(() =>
        {
            var laid = changes.Aggregate(plan, (p, change) => Laid(raceCase, p, change));
            var loading = Rebalanced(plan, Apply(laid, changes));
            return plan.Week is null
                ? loading
                : Enum.GetValues<RaceDayPart>().Aggregate(loading, RaceDay);
        });

        // a food that goes from the loading days goes from race morning too; all other changes are of the loading
        RaceWeekPlan RaceDay(RaceWeekPlan whole, RaceDayPart part)
        {
            var before = whole.AsPlan(part);
            var onFood = changes.Where(c => c is LeaveOutFood or HalveFood);
            return whole.WithPart(part, Rebalanced(before, Apply(before, onFood)).Days[0]);
        }

        RaceWeekPlan Rebalanced(RaceWeekPlan before, RaceWeekPlan after) =>
            after.Days.Where(day => !before.Days.Contains(day)).Aggregate(after, Rebalance);

        RaceWeekPlan Rebalance(RaceWeekPlan p, PlanDay day)
        {
            var request = MenuRequests.Of(p, foods, raceCase.Client) with { Tastes = tastes };
            return p.With(planner.Rebalance(request, day.Date, cancel).Day);
        }
    }

    private static RaceWeekPlan Apply(RaceWeekPlan plan, IEnumerable<PlanChange> changes) =>
        changes.Aggregate(plan, (p, change) => change.Apply(p));

    // where the choices change, targets and days are laid out anew; what stands on the plates is kept as far as it fits
    private static RaceWeekPlan Laid(RaceCase raceCase, RaceWeekPlan plan, PlanChange change)
    {
        if (!change.NeedsTargets(plan))
            return plan;
        var choices = change.Apply(plan.Choices);
        var empty = LoadingPlan.Empty(
            raceCase.Client,
            raceCase.Race.Value,
            raceCase.Screening,
            choices,
            plan.Style,
            raceCase.Targets(choices)
        );
        return plan with
        {
            Choices = choices,
            Targets = empty.Targets,
            Why = empty.Why,
            Days = [.. empty.Days.Select(day => Served(day, plan))],
        };
    }

    private static PlanDay Served(PlanDay day, RaceWeekPlan plan)
    {
        if (plan.Days.FirstOrDefault(d => d.Date == day.Date) is not { } was)
            return day;
        return day with
        {
            Occasions =
            [
                .. day.Occasions.Select(o =>
                    o with
                    {
                        Portions =
                            was.Occasions.FirstOrDefault(w => w.Kind == o.Kind)?.Portions ?? [],
                    }
                ),
            ],
        };
    }
}
