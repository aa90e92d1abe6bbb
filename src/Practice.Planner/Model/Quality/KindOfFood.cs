using Practice.Domain.Foods;

namespace Practice.Planner.Model.Quality;

/// <summary>What kinds of food are used sparingly, whoever eats.</summary>
internal static class KindOfFood
{
    // mg in the smallest serving from which a drink or a sweet keeps a person awake (own rule)
    private const decimal Awake = 15;

    public static long PriceOf(Food food, OccasionKind kind)
    {
        long price = 0;
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
