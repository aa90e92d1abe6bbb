using Practice.Domain.Clients;
using Practice.Domain.Foods;
using Practice.Web.Parts;

namespace Practice.Web.Features.Clients;

/// <summary>What a client eats and must not eat, in words.</summary>
internal static class DietWords
{
    /// <summary>Traits a client may refuse for religion or conviction.</summary>
    public static IReadOnlyList<FoodTraits> Refusable { get; } =
    [
        FoodTraits.Pork,
        FoodTraits.Beef,
        FoodTraits.Meat,
        FoodTraits.Seafood,
        FoodTraits.Alcohol,
        FoodTraits.SportsProduct,
        FoodTraits.Sweetener,
    ];

    public static string Of(FoodTraits trait) =>
        trait switch
        {
            FoodTraits.Seafood => "Fish and seafood",
            FoodTraits.SportsProduct => "Sports products",
            FoodTraits.Sweetener => "Sweeteners",
            _ => Say.Words(trait),
        };

    public static string Of(KitchenLimit limit) =>
        limit switch
        {
            KitchenLimit.NoCooker => "No hob or oven",
            KitchenLimit.NoFridge => "No refrigerator",
            KitchenLimit.Travelling => "Eats out or on the road",
            _ => throw new ArgumentOutOfRangeException(nameof(limit), limit, null),
        };

    public static string Of(HouseholdUnits units) =>
        units == HouseholdUnits.Metric ? "Grams and millilitres" : "Cups and ounces";

    /// <summary>Names of foods by their keys.</summary>
    public static IEnumerable<string> Names(IEnumerable<string> foodIds, FoodLibrary foods) =>
        foodIds.Select(foods.NameOf).Order();
}
