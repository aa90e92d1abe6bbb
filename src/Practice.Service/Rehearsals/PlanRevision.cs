using System.Collections.Immutable;
using Practice.Domain.Clients;
using Practice.Domain.Plans;
using Practice.Domain.Rehearsals;
using Practice.Service.Plans;
using Practice.Service.Races;

namespace Practice.Service.Rehearsals;

/// <summary>Makes the plan that accepted changes ask for: changed, then brought back within its limits day by day.</summary>
public sealed class PlanRevision(IMenuPlanner planner)
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
        var changed = changes.Aggregate(
            changes.Aggregate(plan, (p, change) => Laid(raceCase, p, change)),
            (p, change) => change.Apply(p)
        );
        var leftOut = changes.OfType<LeaveOutFood>().Select(c => c.FoodId).ToHashSet();
        var foods = raceCase.Foods;
        foods = foods with { Allowed = [.. foods.Allowed.Where(f => !leftOut.Contains(f.Id))] };
        return Task.Run(
            () =>
                changed.Days.Aggregate(
                    changed,
                    (p, day) =>
                        p.With(
                            planner
                                .Rebalance(
                                    MenuRequests.Of(p, foods, raceCase.Client) with
                                    {
                                        Tastes = tastes,
                                    },
                                    day.Date,
                                    cancel
                                )
                                .Day
                        )
                ),
            cancel
        );
    }

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
