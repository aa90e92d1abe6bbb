using Practice.Domain.Foods;

namespace Practice.Planner.Model.Quality;

/// <summary>What kinds of food are used sparingly, whoever eats.</summary>
internal static class KindOfFood
{
    public static long PriceOf(Food food)
    {
        long price = 0;
        if (food.Is(FoodTraits.Confectionery))
            price += Prices.Confectionery;
        if (food.Is(FoodTraits.SportsProduct))
            price += Prices.SportsProduct;
        if (food.Is(FoodTraits.Sugary) && food.IsLiquid && !food.Is(FoodTraits.SportsProduct))
            price += Prices.SoftDrink;
        return price;
    }
}
