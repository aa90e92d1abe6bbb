using Practice.Domain.Foods;
using Practice.Domain.Plans;

namespace Practice.Planner.Model.Quality;

/// <summary>What this client likes, has tolerated or suspects, and which stand-ins are needed.</summary>
internal sealed class ClientTastes(MenuRequest request)
{
    public long PriceOf(Food food)
    {
        var tastes = request.Tastes;
        var isKnownGood = tastes.Likes.Contains(food.Id) || tastes.Tolerated.Contains(food.Id);
        long price = 0;
        if (tastes.Likes.Contains(food.Id))
            price -= Prices.Liked;
        if (tastes.Tolerated.Contains(food.Id))
            price -= Prices.Tolerated;
        if (tastes.Suspect.Contains(food.Id))
            price += Prices.Suspect;
        if (food.Is(FoodTraits.Substitute) && !isKnownGood)
            price += Prices.SubstituteNotNeeded;
        if (food.Is(FoodTraits.HighResidue) && !tastes.Tolerated.Contains(food.Id))
            price += Prices.HighResidue;
        return price;
    }
}
