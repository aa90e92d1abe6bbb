using Practice.Domain.Foods;
using Practice.Planner.Meals;

namespace Practice.Planner.Model.Quality;

/// <summary>What is wished of one plate: few foods, little bulk, what the client likes, a protein food at mains.</summary>
internal static class PlateWishes
{
    public static void Add(MenuModel model, Plate plate)
    {
        var isEve = model.Request.Days[plate.Day].DaysBefore <= 1;
        var client = model.Tastes;
        foreach (var candidate in plate.Candidates.Where(c => !c.IsLocked))
        {
            var food = candidate.Food;
            model.ChargePresence(
                candidate,
                OnThePlate(candidate.Role, isEve)
                    + KindOfFood.PriceOf(candidate.Item, plate.Kind)
                    + client.PriceOf(food)
            );
            var perGram = food.IsLiquid ? Prices.DrunkGram : Prices.SolidGram;
            model.Charge(
                candidate.Amount,
                (long)Math.Round(perGram * food.Serving.StepGrams)
                    + Prices.FibreHundredth * candidate.Item.Fibre
            );
        }
        model.Prefer(
            Sum.OfPresence(plate, c => c.Role == MealRole.Drink),
            -Row.Unbounded,
            1,
            Prices.SecondDrink,
            "one drink is enough"
        );
        if (plate.Kind == OccasionKind.Breakfast)
            model.Prefer(
                Sum.OfPresence(plate, c => c.Role is MealRole.Drink or MealRole.Fruit),
                1,
                Row.Unbounded,
                Prices.NothingFreshAtBreakfast,
                "a drink or fruit at breakfast"
            );
        if (Helpings.IsMain(plate.Kind))
            model.Prefer(
                Sum.OfPresence(plate, c => MealParts.IsProteinFood(c.Item)),
                1,
                Row.Unbounded,
                Prices.NoProteinFood,
                "a protein food at a main meal"
            );
    }

    private static long OnThePlate(MealRole role, bool isEve) =>
        Prices.Food
        - role switch
        {
            MealRole.Fruit => Prices.FruitBonus,
            MealRole.Vegetable or MealRole.Salad => isEve
                ? Prices.VegetableBonusOnTheEve
                : Prices.VegetableBonus,
            MealRole.Protein => Prices.ProteinBonus,
            _ => 0,
        };
}
