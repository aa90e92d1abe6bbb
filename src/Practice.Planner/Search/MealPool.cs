using System.Globalization;
using Practice.Planner.Model;

namespace Practice.Planner.Search;

/// <summary>
/// For every plate a few hundred good meals of different kinds: low in fibre, rich in protein, more drunk, less sweet,
/// so that whatever the day lacks, some meal has it.
/// </summary>
internal static class MealPool
{
    private const int Draws = 3000;
    private const int Kept = 300;

    public static Meal[][] For(MenuModel model, CancellationToken cancel)
    {
        var pools = new Meal[model.Plates.Count][];
        // each kind of plate has its own luck, so that it does not matter which is drawn first
        Parallel.ForEach(
            model.Plates.GroupBy(p => Likeness(model, p)),
            alike =>
            {
                var first = alike.First();
                pools[first.Index] = Drawn(model, first, cancel);
                foreach (var plate in alike.Skip(1))
                    pools[plate.Index] = Moved(model, pools[first.Index], first, plate);
            }
        );
        return pools;
    }

    // plates with the same foods, aim and limits share what was drawn; locks make a plate its own
    private static string Likeness(MenuModel model, Plate plate)
    {
        if (plate.HasLocks)
            return $"{plate.Index}";
        var limits = model.Request.Days[plate.Day].Limits;
        return string.Create(
            CultureInfo.InvariantCulture,
            $"""
            {plate.Kind} {plate.Aim} {plate.VariableCount} {limits.OccasionTolerance} {limits.OccasionWeightMaxG}
            {limits.FructoseMaxPerOccasionG} {limits.LactoseMaxPerOccasionG}
            """
        );
    }

    private static Meal[] Drawn(MenuModel model, Plate plate, CancellationToken cancel)
    {
        var draw = new MealDraw(model, plate);
        var random = new Random(model.Request.Seed * 1000 + plate.Index);
        var tendencies = Tendency.All.Select(t => t.ChargesOn(plate)).ToArray();
        var meals = new Dictionary<string, Meal>();
        for (var i = 0; i < Draws && !cancel.IsCancellationRequested; i++)
            if (draw.Next(tendencies[random.Next(tendencies.Length)], random) is { } meal)
                meals.TryAdd(KeyOf(meal), meal);
        return meals.Count == 0 ? [draw.Nothing()] : Best([.. meals.Values]);
    }

    private static Meal[] Moved(MenuModel model, Meal[] meals, Plate from, Plate to)
    {
        var draw = new MealDraw(model, to);
        var there = from.Candidates.Zip(to.Candidates).ToDictionary(p => p.First, p => p.Second);
        return
        [
            .. meals.Select(meal =>
                draw.Priced(
                    new Meal(
                        to.Patterns.Single(p => p.Pattern == meal.Pattern.Pattern),
                        [.. meal.Helpings.Select(h => new Helping(there[h.Candidate], h.Steps))],
                        0
                    )
                )
            ),
        ];
    }

    private static string KeyOf(Meal meal) =>
        string.Join(
            ',',
            meal.Helpings.Select(h => (h.Candidate.Amount, h.Steps))
                .Order()
                .Prepend((meal.Pattern.Chosen, 0))
        );

    // the cheapest by each tendency, not all of them built on the same food
    private static Meal[] Best(Meal[] meals)
    {
        var each = Kept / Tendency.All.Length;
        var best = new HashSet<Meal>();
        foreach (var tendency in Tendency.All)
        {
            var taken = 0;
            var perMain = new Dictionary<Candidate, int>();
            foreach (var meal in meals.OrderBy(m => m.Cost + tendency.ChargeOf(m)))
            {
                if (taken == each)
                    break;
                var main = meal.Main ?? meal.Helpings[0].Candidate;
                var count = perMain.GetValueOrDefault(main);
                if (count >= Math.Max(3, each / 4))
                    continue;
                perMain[main] = count + 1;
                if (best.Add(meal))
                    taken++;
            }
        }
        return [.. best.OrderBy(m => m.Cost)];
    }
}
