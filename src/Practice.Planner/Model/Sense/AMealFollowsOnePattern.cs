using Practice.Planner.Meals;

namespace Practice.Planner.Model.Sense;

/// <summary>A meal follows exactly one pattern; an empty plate is the dear way out when no meal can be made.</summary>
internal static class AMealFollowsOnePattern
{
    public static void Add(MenuModel model, Plate plate)
    {
        var followed = new Sum();
        foreach (var (pattern, chosen) in plate.Patterns)
        {
            followed.Plus(chosen);
            model.Charge(
                chosen,
                pattern == MealPatterns.Nothing
                    ? Prices.NothingFits
                    : pattern.Cost * Prices.SeldomPattern
            );
        }
        model.Require(plate, followed, 1, 1, "a meal follows one pattern");
    }
}
