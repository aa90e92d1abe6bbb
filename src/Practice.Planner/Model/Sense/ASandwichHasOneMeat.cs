using Practice.Domain.Foods;

namespace Practice.Planner.Model.Sense;

/// <summary>Two fillings in a sandwich are a protein food and something beside it, not turkey with tofu.</summary>
internal static class ASandwichHasOneMeat
{
    public static void Add(MenuModel model, Plate plate) =>
        model.Require(
            plate,
            Sum.OfPresence(
                plate,
                c => c.Role == MealRole.Filling && c.Food.Group == FoodGroup.Protein
            ),
            -Row.Unbounded,
            1,
            "one protein filling is enough"
        );
}
