using Practice.Domain.Foods;
using Practice.Domain.Plans;
using Practice.Planner.Meals;

namespace Practice.Planner.Model;

/// <summary>Lays out what could be on each plate: patterns that can be filled, foods that play a part in them.</summary>
internal static class PlateChoices
{
    public static List<Plate> For(MenuModel model, bool keepsPresentFoods)
    {
        var foods = model.Request.Foods.ToDictionary(f => f.Id);
        var items = model
            .Request.Foods.SelectMany(food => food.Roles.Select(role => new Item(food, role)))
            .ToList();
        var plates = new List<Plate>();
        for (var day = 0; day < model.Request.Days.Length; day++)
            foreach (var occasion in model.Request.Days[day].Occasions)
                plates.Add(
                    Lay(model, day, occasion, plates.Count, items, foods, keepsPresentFoods)
                );
        return plates;
    }

    private static Plate Lay(
        MenuModel model,
        int day,
        Occasion occasion,
        int index,
        List<Item> items,
        Dictionary<string, Food> foods,
        bool keepsPresentFoods
    )
    {
        var kept = occasion
            .Portions.Where(p => p.IsLocked || keepsPresentFoods)
            .Where(p => foods.ContainsKey(p.FoodId))
            .ToList();
        var choices = Open(items, occasion, kept);
        var patterns = Fillable(
            occasion.Kind,
            [.. choices.Select(c => c.Item.Role), .. kept.Select(p => p.Role)]
        );
        var played = patterns.SelectMany(p => p.Parts).Select(p => p.Role).ToHashSet();

        var first = model.Variables.Count;
        var candidates = new List<Candidate>();
        foreach (var (item, servings) in choices.Where(c => played.Contains(c.Item.Role)))
            candidates.Add(NewCandidate(model, index, item, servings));
        foreach (var portion in kept)
            candidates.Add(Keep(model, index, portion, foods[portion.FoodId], occasion));

        var choicesOfPattern = patterns
            .Append(MealPatterns.Nothing)
            .Select(p => new PatternChoice(p, model.NewVariable([0, 1], index)))
            .ToArray();

        return new Plate
        {
            Index = index,
            Day = day,
            Occasion = occasion,
            Candidates = [.. candidates],
            Patterns = choicesOfPattern,
            FirstVariable = first,
            VariableCount = model.Variables.Count - first,
        };
    }

    // foods that suit the sitting and whose smallest helping is not too much for it; kept foods come in their own way
    private static List<(Item Item, int[] Servings)> Open(
        List<Item> items,
        Occasion occasion,
        List<Portion> kept
    ) =>
        [
            .. items
                .Where(i => i.Food.Occasions.Contains(occasion.Kind))
                .Where(i =>
                    !kept.Exists(p => p.FoodId == i.Food.Id && (p.IsLocked || p.Role == i.Role))
                )
                .Select(i =>
                    (i, Helpings.Of(i.Food, i.Role, occasion.Kind, occasion.CarbohydrateAimG))
                )
                .Where(c => c.Item2.Length > 0),
        ];

    private static List<MealPattern> Fillable(OccasionKind kind, HashSet<MealRole> roles) =>
        [
            .. MealPatterns.All.Where(p =>
                p.At.Contains(kind)
                && p.Parts.All(part => part.Least == 0 || roles.Contains(part.Role))
            ),
        ];

    private static Candidate NewCandidate(
        MenuModel model,
        int plate,
        Item item,
        int[] servings,
        Portion? kept = null
    )
    {
        var isLocked = kept is { IsLocked: true };
        long[] present = isLocked ? [1] : [0, 1];
        long[] amount = isLocked ? [servings[0]] : [0, .. servings.Select(s => (long)s)];
        return new Candidate(
            item,
            servings,
            model.NewVariable(present, plate),
            model.NewVariable(amount, plate),
            kept
        );
    }

    // a kept portion counts with the facts it was planned with
    private static Candidate Keep(
        MenuModel model,
        int plate,
        Portion portion,
        Food food,
        Occasion occasion
    )
    {
        var part = food.Roles.FirstOrDefault(r => r.Role == portion.Role);
        var item = new Item(
            food with
            {
                Per100G = portion.Per100G,
                Serving = portion.Serving,
                IsLiquid = portion.IsLiquid,
            },
            part ?? new FoodRole(portion.Role, 0)
        );
        int[] servings = portion.IsLocked
            ? [portion.Steps]
            :
            [
                .. Helpings
                    .Of(item.Food, item.Role, occasion.Kind, occasion.CarbohydrateAimG)
                    .Append(portion.Steps)
                    .Distinct()
                    .Order(),
            ];
        return NewCandidate(model, plate, item, servings, portion);
    }
}
