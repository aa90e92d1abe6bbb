using Practice.Domain.Foods;
using Practice.Domain.Plans;
using Practice.Planner.Meals;

namespace Practice.Planner.Model.Limits;

/// <summary>Within a day nothing comes too often; beyond once it is charged, beyond the most it breaks a limit.</summary>
internal static class DayVariety
{
    public static void Add(MenuModel model, int day)
    {
        var style = model.Request.Style;
        var plates = model.PlatesOf(day).ToList();
        var candidates = plates.SelectMany(s => s.Candidates).ToList();

        foreach (var family in candidates.GroupBy(c => c.Food.Family))
        {
            var most = Repetition.MostOfFamily([.. family.Select(c => c.Item)], style);
            var sum = Presence(family);
            Cap(sum, most, $"{family.Key} {MoreThan(most)}");
            if (most > 1)
                ChargeAgain(sum, Prices.FamilyAgain, $"{family.Key} again");
        }

        foreach (var food in candidates.GroupBy(c => c.Food.Id))
        {
            var first = food.First();
            var most = Repetition.MostOfFood(first.Food);
            var sum = Presence(food);
            Cap(sum, most, $"{first.Food.Name} {MoreThan(most)}");
            if (most > 1 && style == MenuStyle.Vary && first.Role != MealRole.Milk)
                ChargeAgain(sum, PriceAgain(first.Role), $"{first.Food.Name} again");
        }

        Cap(
            Presence(candidates.Where(c => c.Food.Is(FoodTraits.Confectionery))),
            Repetition.MostConfectionery,
            $"sweets {MoreThan(Repetition.MostConfectionery)}"
        );

        foreach (var pattern in plates.SelectMany(s => s.Patterns).GroupBy(p => p.Pattern))
        {
            if (pattern.Key == MealPatterns.Nothing)
                continue;
            var sum = new Sum();
            foreach (var choice in pattern)
                sum.Plus(choice.Chosen);
            var isMain = pattern.Key.At.Any(Helpings.IsMain);
            var most = isMain ? Repetition.MostOfMainMeal(style) : Repetition.MostOfSnack;
            Cap(sum, most, $"{pattern.Key.Name} {MoreThan(most)}");
            if (most > 1)
                ChargeAgain(sum, Prices.PatternAgain, $"{pattern.Key.Name} again");
        }

        // a cap that the number of places keeps by itself needs no row
        void Cap(Sum sum, int usual, string says)
        {
            var most = usual + model.Request.Days[day].Limits.MoreRepeats;
            if (Places(sum) > most)
                model.Prefer(
                    sum,
                    -Row.Unbounded,
                    most,
                    Prices.OncePerDay,
                    says,
                    new Limit(LimitKind.Variety, day, 1)
                );
        }

        void ChargeAgain(Sum sum, long price, string says)
        {
            if (Places(sum) > 1)
                model.Prefer(sum, -Row.Unbounded, 1, price, says);
        }

        int Places(Sum sum) =>
            sum.Variables.Select(v => model.Variables[v].Plate).Distinct().Count();
    }

    private static Sum Presence(IEnumerable<Candidate> candidates)
    {
        var sum = new Sum();
        foreach (var candidate in candidates)
            sum.Plus(candidate.Present);
        return sum;
    }

    private static string MoreThan(int most) =>
        most switch
        {
            1 => "more than once",
            2 => "more than twice",
            _ => $"more than {most} times",
        };

    private static long PriceAgain(MealRole role) =>
        role is MealRole.Bread or MealRole.Spread ? Prices.BreadAgain : Prices.FoodAgain;
}
