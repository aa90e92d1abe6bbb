using Practice.Domain.Foods;

namespace Practice.Planner.Model.Quality;

/// <summary>What kinds of food are used sparingly, whoever eats.</summary>
internal static class KindOfFood
{
    // mg in the smallest serving from which a drink or a sweet keeps a person awake (own rule): cola does
    private const decimal Awake = 10;

    public static long PriceOf(Item item, OccasionKind kind)
    {
        var food = item.Food;
        long price = 0;
        if (item.Role == MealRole.Spread && food.Family == "syrup")
            price += Prices.SyrupOnBread;
        if (food.Is(FoodTraits.Confectionery))
            price += Prices.Confectionery;
        if (food.Is(FoodTraits.SportsProduct))
            price += food.IsLiquid ? Prices.SportsDrink : Prices.SportsBite;
        if (food.Is(FoodTraits.Sugary) && food.IsLiquid && !food.Is(FoodTraits.SportsProduct))
            price += Prices.SoftDrink;
        if (
            kind >= OccasionKind.LateAfternoonSnack
            && food.PerStep.CaffeineMg * food.Serving.MinSteps >= Awake
        )
            price += Prices.CaffeineLate;
        return price;
    }
}
