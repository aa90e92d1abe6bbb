using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Foods;
using Practice.Domain.Plans;
using Practice.Planner.Checking;
using Practice.Planner.Conflicts;
using Practice.Planner.Editing;
using Practice.Planner.Search;

namespace Practice.Planner;

/// <summary>
/// Fills days with food: draws good meals for every sitting, picks among them by annealing, then lets the constraint
/// solver improve a few sittings at a time. See <c>docs/planner.md</c>. Holds no state: one serves everybody.
/// </summary>
public sealed class MenuPlanner : IMenuPlanner
{
    /// <summary>
    /// Takes the slowness out of the first request: called once in the background when the program starts.
    /// </summary>
    public void WarmUp(CancellationToken cancel = default)
    {
        var request = Warmth.SmallRequest();
        var menu = Build(request, null, cancel);
        Rebalance(request with { Days = menu.Days }, request.Days[0].Date, cancel);
    }

    /// <inheritdoc />
    public MenuResult Build(
        MenuRequest request,
        IProgress<MenuProgress>? progress,
        CancellationToken cancel
    )
    {
        ArgumentNullException.ThrowIfNull(request);
        return MenuBuild.Of(request, progress, cancel);
    }

    /// <inheritdoc />
    public Rebalanced Rebalance(MenuRequest request, LocalDate day, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(request);
        return DayRebalance.Of(request, day, cancel);
    }

    /// <inheritdoc />
    public ImmutableArray<SwapOption> Swaps(MenuRequest request, PortionRef portion)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(portion);
        return PortionSwaps.For(request, portion);
    }

    /// <inheritdoc />
    public ImmutableArray<Portion> Additions(
        MenuRequest request,
        LocalDate day,
        OccasionKind occasion
    )
    {
        ArgumentNullException.ThrowIfNull(request);
        return PlateAdditions.For(request, day, occasion);
    }

    /// <inheritdoc />
    public ImmutableArray<Shortfall> Check(MenuRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        return MenuCheck.Of(request);
    }

    /// <inheritdoc />
    public ImmutableArray<MenuConflict> Explain(MenuRequest request, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(request);
        return Explanation.Of(request, cancel);
    }
}
