using System.Collections.Immutable;
using Practice.Domain.Foods;
using Practice.Domain.Plans;
using Practice.Planner.Meals;
using Practice.Planner.Model;

namespace Practice.Planner;

/// <summary>Turns the values of a model back into days with food on them.</summary>
internal static class MenuWriter
{
    public static ImmutableArray<PlanDay> Write(MenuModel model, long[] values)
    {
        var days = model.Request.Days;
        foreach (var plate in model.Plates)
            days = days.SetItem(
                plate.Day,
                days[plate.Day].With(Write(model.Request, plate, values))
            );
        return days;
    }

    private static Occasion Write(MenuRequest request, Plate plate, long[] values)
    {
        var pattern = plate.Patterns.Single(p => values[p.Chosen] == 1).Pattern;
        return plate.Occasion with
        {
            Pattern = pattern == MealPatterns.Nothing ? null : pattern.Name,
            Portions =
            [
                .. plate
                    .Candidates.Where(c => values[c.Present] == 1)
                    .OrderBy(c => ServingOrder(c.Role))
                    .Select(c => Portion(request, c, (int)values[c.Amount])),
            ],
        };
    }

    private static Portion Portion(MenuRequest request, Candidate candidate, int steps)
    {
        if (!request.Foods.Any(f => f.Id == candidate.Food.Id))
            throw new InvalidOperationException(
                $"{candidate.Food.Id} is not among the foods of the request."
            );
        return candidate.Kept is { } kept
            ? kept with
            {
                Steps = steps,
            }
            : Domain.Plans.Portion.Of(candidate.Food, candidate.Role, steps, request.Units);
    }

    // the order in which a meal is read out: what it is named after first, the drink last
    private static int ServingOrder(MealRole role) =>
        role switch
        {
            _ when MealParts.IsStaple(role) => 0,
            MealRole.Bread or MealRole.Cereal or MealRole.Porridge or MealRole.Pancake => 1,
            MealRole.Yoghurt or MealRole.Shake => 2,
            MealRole.Milk or MealRole.Spread or MealRole.Filling or MealRole.Syrup => 3,
            MealRole.PastaSauce or MealRole.RiceSauce or MealRole.Dip or MealRole.Topping => 4,
            MealRole.Protein => 5,
            MealRole.Vegetable or MealRole.Salad => 6,
            MealRole.SideBread or MealRole.SideFlatbread or MealRole.SavouryBite => 7,
            MealRole.SweetBite or MealRole.Fruit or MealRole.Dessert => 8,
            _ => 9,
        };
}
