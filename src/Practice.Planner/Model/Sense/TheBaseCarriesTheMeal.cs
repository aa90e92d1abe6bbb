using Practice.Planner.Meals;

namespace Practice.Planner.Model.Sense;

/// <summary>The starchy base brings a fair part of a meal's carbohydrate: dinner is not sauce, sweets and juice.</summary>
internal static class TheBaseCarriesTheMeal
{
    public static void Add(MenuModel model, Plate plate)
    {
        if (MealParts.LeastBaseShare(plate.Kind) is not { } share)
            return;
        var percent = (long)Math.Round(share * 100);
        var sum = Sum.OfAmounts(
            plate,
            item => (MealParts.IsBase(item.Role) ? 100 - percent : -percent) * item.Carbohydrate
        );
        model.Require(
            plate,
            sum,
            0,
            Row.Unbounded,
            "the starchy base is too small a part of the meal"
        );
    }
}
