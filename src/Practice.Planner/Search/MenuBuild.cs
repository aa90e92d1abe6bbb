using Practice.Domain.Plans;
using Practice.Planner.Checking;
using Practice.Planner.Model;

namespace Practice.Planner.Search;

/// <summary>Fills days from nothing: a pool of meals, annealing, improvement by the constraint solver.</summary>
internal static class MenuBuild
{
    // how far along the work is when the first complete menu stands
    private const double FirstMenu = 0.2;

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
        var model = MenuModel.ToFill(request);
        progress?.Report(new MenuProgress("Choosing meals for each day", 0.05, null, 0));
        var improvement = Begin(model, cancel);
        Report(FirstMenu, isBetter: true);
        improvement.Run(
            solves ?? Improvement.UsualSolves(model),
            (done, isBetter) => Report(FirstMenu + (1 - FirstMenu) * done, isBetter),
            cancel
        );

        var days = MenuWriter.Write(model, improvement.Values);
        return new MenuResult(
            days,
            [.. MenuCheck.NoLongerServed(request), .. MenuCheck.Of(request with { Days = days })],
            improvement.Cost,
            cancel.IsCancellationRequested
        );

        void Report(double fraction, bool isBetter) =>
            progress?.Report(
                new MenuProgress(
                    "Improving the menu",
                    fraction,
                    isBetter ? MenuWriter.Write(model, improvement.Values) : null,
                    improvement.Cost
                )
            );
    }

    /// <summary>A first complete menu, ready to be improved.</summary>
    public static Improvement Begin(MenuModel model, CancellationToken cancel)
    {
        var annealing = new Annealing(model, MealPool.For(model, cancel));
        annealing.Run(model.Request.Seed, cancel);
        return new Improvement(model, ValuesOf(model, annealing.Picked));
    }

    public static long[] ValuesOf(MenuModel model, IEnumerable<Meal> meals)
    {
        var values = new long[model.Variables.Count];
        foreach (var (variable, value) in meals.SelectMany(m => m.Values))
            values[variable] = value;
        return values;
    }
}
