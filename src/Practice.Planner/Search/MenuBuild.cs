using System.Collections.Immutable;
using Practice.Domain.Plans;
using Practice.Planner.Checking;
using Practice.Planner.Model;

namespace Practice.Planner.Search;

/// <summary>Fills days from nothing: a pool of meals, annealing, improvement by the constraint solver.</summary>
internal static class MenuBuild
{
    // how far along the work is when the first complete menu stands
    private const double FirstMenu = 0.2;
    private const double RefinedMenu = 0.8;

    private const int MovesFromThePool = 300_000;
    private const double HotFromThePool = 15_000;

    /// <param name="request">What to fill.</param>
    /// <param name="progress">Told of every better menu.</param>
    /// <param name="cancel">Ends it with the best so far.</param>
    /// <param name="solves">How often the solver may improve it; the usual number when null.</param>
    public static MenuResult Of(
        MenuRequest request,
        IProgress<MenuProgress>? progress,
        CancellationToken cancel,
        int? solves = null
    )
    {
        progress?.Report(new MenuProgress("Laying out what could be served", 0, null, 0));
        var model = MenuModel.ToFill(request, leavesRoom: true);
        var better = new List<long[]>();
        progress?.Report(new MenuProgress("Choosing meals for each day", 0.05, null, 0));
        var improvement = Begin(
            model,
            (done, menu) => Report(FirstMenu + (RefinedMenu - FirstMenu) * done, menu),
            cancel
        );
        improvement.Run(
            solves ?? Improvement.UsualSolves(model),
            (done, menu) => Report(RefinedMenu + (1 - RefinedMenu) * done, menu),
            cancel
        );

        var (days, shortfalls) = Best();
        return new MenuResult(days, shortfalls, improvement.Cost, cancel.IsCancellationRequested);

        // the solver counts in hundredths: should its last menu be a hair over a limit on paper that an earlier one keeps,
        // the earlier one it is
        (ImmutableArray<PlanDay>, ImmutableArray<Shortfall>) Best()
        {
            var last = Read(improvement.Values);
            return last.Shortfalls.IsEmpty
                ? last
                : better
                    .AsEnumerable()
                    .Reverse()
                    .Select(Read)
                    .FirstOrDefault(m => m.Shortfalls.IsEmpty, last);
        }

        (ImmutableArray<PlanDay> Days, ImmutableArray<Shortfall> Shortfalls) Read(long[] values)
        {
            var days = MenuWriter.Write(model, values);
            return (
                days,
                [
                    .. MenuCheck.NoLongerServed(request),
                    .. MenuCheck.Of(request with { Days = days }),
                ]
            );
        }

        void Report(double fraction, long[]? menu)
        {
            if (menu is not null)
                better.Add(menu);
            progress?.Report(
                new MenuProgress(
                    "Improving the menu",
                    fraction,
                    menu is null ? null : MenuWriter.Write(model, menu),
                    model.CostOf(better[^1])
                )
            );
        }
    }

    /// <summary>A complete menu to be improved by the solver.</summary>
    /// <param name="model">The whole question.</param>
    /// <param name="onStep">Told the first menu that stands, at 0, and how it is refined.</param>
    /// <param name="cancel">Ends it with the best so far.</param>
    public static Improvement Begin(MenuModel model, OnStep onStep, CancellationToken cancel)
    {
        var pool = MealPool.For(model, cancel);
        var annealing = new Annealing(model, pool);
        annealing.Run(MovesFromThePool, HotFromThePool, model.Request.Seed, cancel);
        Meal[] first = [.. annealing.Picked];
        onStep(0, ValuesOf(model, first));
        return new Improvement(model, new Refinement(model, onStep, cancel).Of(pool, first));
    }

    public static long[] ValuesOf(MenuModel model, IEnumerable<Meal> meals)
    {
        var values = new long[model.Variables.Count];
        foreach (var (variable, value) in meals.SelectMany(m => m.Values))
            values[variable] = value;
        return values;
    }
}
