using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Foods;
using Practice.Domain.Plans;

namespace Practice.Service.Plans;

/// <summary>The planner at the workbench: everything but building anew, for a plan that is not saved yet.</summary>
public sealed class Kitchen(IMenuPlanner planner, Stove stove)
{
    /// <summary>Restores a day's limits around what is locked.</summary>
    public Task<Rebalanced> Rebalance(
        PlanFile file,
        RaceWeekPlan plan,
        LocalDate day,
        CancellationToken cancel
    ) => stove.Run(() => planner.Rebalance(file.RequestFor(plan), day, cancel));

    /// <summary>Fills the whole plan anew around what is locked.</summary>
    public Task<MenuResult> Build(
        PlanFile file,
        RaceWeekPlan plan,
        IProgress<MenuProgress>? progress,
        CancellationToken cancel
    ) => stove.Run(() => planner.Build(file.RequestFor(plan), progress, cancel));

    /// <summary>What could stand in for a portion.</summary>
    public Task<ImmutableArray<SwapOption>> Swaps(
        PlanFile file,
        RaceWeekPlan plan,
        PortionRef portion
    ) => stove.Run(() => planner.Swaps(file.RequestFor(plan), portion));

    /// <summary>What could be added to a sitting.</summary>
    public Task<ImmutableArray<Portion>> Additions(
        PlanFile file,
        RaceWeekPlan plan,
        LocalDate day,
        OccasionKind occasion
    ) => stove.Run(() => planner.Additions(file.RequestFor(plan), day, occasion));

    /// <summary>Which limits the plan misses as it stands.</summary>
    public ImmutableArray<Shortfall> Check(PlanFile file, RaceWeekPlan plan) =>
        planner.Check(file.RequestFor(plan));

    /// <summary>Why no menu keeps all limits, and what would help.</summary>
    public Task<ImmutableArray<MenuConflict>> Explain(
        PlanFile file,
        RaceWeekPlan plan,
        CancellationToken cancel
    ) => stove.Run(() => planner.Explain(file.RequestFor(plan), cancel));
}
