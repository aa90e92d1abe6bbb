using Practice.Domain.Clients;
using Practice.Domain.Foods;
using Practice.Domain.Plans;
using Practice.Planner.Meals;

namespace Practice.Planner.Model.Quality;

/// <summary>What this client likes, has tolerated or suspects, and which stand-ins are wanted.</summary>
internal sealed class ClientTastes
{
    private readonly Dictionary<string, long> _prices;

    public ClientTastes(MenuRequest request)
    {
        var standIns = new StandIns(request);
        _prices = request.Foods.ToDictionary(
            food => food.Id,
            food => PriceOf(food, request.Tastes, standIns) + Whim(food, request.Seed)
        );
    }

    public long PriceOf(Food food) => _prices[food.Id];

    private static long PriceOf(Food food, Tastes tastes, StandIns standIns)
    {
        var isLiked = tastes.Likes.Contains(food.Id);
        var isTolerated = tastes.Tolerated.Contains(food.Id);
        long price = 0;
        if (isLiked)
            price -= Prices.Liked;
        if (isTolerated)
            price -= Prices.Tolerated;
        if (tastes.Suspect.Contains(food.Id))
            price += Prices.Suspect;
        if (food.Is(FoodTraits.Substitute) && !isLiked && !isTolerated && !standIns.IsWanted(food))
            price += Prices.StandInNotWanted;
        if (food.Is(FoodTraits.HighResidue) && !isTolerated)
            price += Prices.HighResidue;
        if (!Everyday.Is(food) && !isLiked && !isTolerated)
            price += Prices.LessUsual;
        return price;
    }

    // among foods that are as good as one another the seed decides, so that not every client eats the same
    private static long Whim(Food food, int seed)
    {
        var hash = 2166136261u;
        foreach (var c in food.Id)
            hash = unchecked((hash ^ c) * 16777619u);
        hash = unchecked((hash ^ (uint)seed) * 16777619u);
        hash ^= hash >> 15;
        return hash % (uint)Prices.Whim;
    }
}
