using Practice.Planner.Model;

namespace Practice.Planner.Search;

/// <summary>
/// Looks for meals that are cheap by the prices of a mixture: single foods are moved about on the meals nearest to it, each plate by
/// itself. What is found makes the next mixture cheaper.
/// </summary>
internal sealed class Bargains(MenuModel model, Random random)
{
    private const int StartsNearest = 4;

    // the nearest alone are much alike, and so is what is found from them
    private const int StartsElsewhere = 6;
    private const int Elsewhere = 100;

    private const long BrokenSense = 20_000;
    private static readonly Cooling OnAMeal = new(400, 2000, 30, long.MaxValue / 8);

    private readonly Row[] _ofOnePlate = [.. model.Rows.Where(r => r.Plate >= 0)];

    /// <summary>Looks once on every plate and puts what was found into the mixture.</summary>
    /// <param name="mixture">A mixture with prices.</param>
    public void AddTo(Mixture mixture)
    {
        long[] costs = [.. mixture.CostsAt(mixture.Prices).Select(c => (long)Math.Round(c))];
        var nearest = model.Plates.Select(p => mixture.Nearest(p.Index)).ToArray();
        var table = new Table(
            model,
            Score.OfMenu(model, _ofOnePlate, BrokenSense, costs),
            [.. nearest.Select(n => n[0])]
        );
        var settling = new Settling(model, table, model.Costs, random);
        foreach (var plate in model.Plates)
        foreach (var meal in StartsAmong(nearest[plate.Index]))
            mixture.Add(plate.Index, BetterThan(meal, plate.Index, table, settling));
    }

    private IEnumerable<Meal> StartsAmong(IReadOnlyList<Meal> nearest)
    {
        for (var i = 0; i < StartsNearest; i++)
            yield return nearest[Math.Min(i, nearest.Count - 1)];
        for (var i = 0; i < StartsElsewhere; i++)
            yield return nearest[random.Next(Math.Min(Elsewhere, nearest.Count))];
    }

    private static Meal BetterThan(Meal meal, int plate, Table table, Settling settling)
    {
        table.Lay(plate, meal);
        var (best, bestCost) = (meal, table.Cost);
        settling.Run(plate, [plate], table.Cost, OnAMeal, Look);
        table.Keep();
        return best;

        void Look()
        {
            if (table.MakesSense && table.Cost < bestCost)
                (best, bestCost) = (table.MealOn(plate), table.Cost);
        }
    }
}
