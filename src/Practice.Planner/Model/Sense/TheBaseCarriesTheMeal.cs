using Practice.Domain.Foods;
using Practice.Planner.Meals;

namespace Practice.Planner.Model.Sense;

/// <summary>The starchy base brings a fair part of a meal's carbohydrate: dinner is not sauce, sweets and juice.</summary>
internal static class TheBaseCarriesTheMeal
{
    public static void Add(MenuModel model, Plate plate)
    {
        if (MealParts.LeastBaseShare(plate.Kind) is { } share)
            BringAtLeast(
                model,
                plate,
                share,
                MealParts.IsBase,
                "the starchy base is too small a part of the meal"
            );
        if (Helpings.IsMain(plate.Kind))
            BringAtLeast(
                model,
                plate,
                MealParts.LeastStapleShare,
                role => MealParts.IsStaple(role) || role == MealRole.Bread,
                "what the meal is named after is too small a part of it"
            );
    }

    private static void BringAtLeast(
        MenuModel model,
        Plate plate,
        double share,
        Func<MealRole, bool> counts,
        string says
    )
    {
        var percent = (long)Math.Round(share * 100);
        var sum = Sum.OfAmounts(
            plate,
            item => (counts(item.Role) ? 100 - percent : -percent) * item.Carbohydrate
        );
        model.Require(plate, sum, 0, Row.Unbounded, says);
    }
}
