using Practice.Planner.Meals;

namespace Practice.Planner.Model.Sense;

/// <summary>A plate holds at least what its pattern asks and not more than a person would lay on it.</summary>
internal static class APlateHoldsSoManyFoods
{
    public static void Add(MenuModel model, Plate plate)
    {
        var foods = Sum.OfPresence(plate, _ => true);
        model.Require(
            plate,
            foods,
            -Row.Unbounded,
            Helpings.MostFoods(plate.Kind),
            "too many foods for one sitting"
        );

        var least = new Sum().Plus(foods);
        foreach (var (pattern, chosen) in plate.Patterns)
            least.Plus(chosen, -pattern.LeastFoods);
        model.Require(plate, least, 0, Row.Unbounded, "too little to be a meal");
    }
}
