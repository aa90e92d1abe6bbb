using System.Collections.Immutable;
using Practice.Domain.Clients;
using Practice.Domain.Foods;
using Practice.Domain.Screening;

namespace Practice.Domain.Plans;

/// <summary>A food a client is not served, and why.</summary>
/// <param name="Food">The food.</param>
/// <param name="Reason">Why, in words.</param>
/// <param name="IsSafety">Whether it is allergy or medical, so that nobody may add it by hand either.</param>
public sealed record ExcludedFood(Food Food, string Reason, bool IsSafety);

/// <summary>
/// Which foods of a library a client may be served. What falls out here never comes back: no algorithm trades it.
/// </summary>
/// <param name="Allowed">Foods the planner may use.</param>
/// <param name="Excluded">The others with the reason.</param>
public sealed record EligibleFoods(
    ImmutableArray<Food> Allowed,
    ImmutableArray<ExcludedFood> Excluded
)
{
    /// <summary>Foods a practitioner may add by hand: everything that is not excluded for safety.</summary>
    public IEnumerable<Food> AddableByHand =>
        Allowed.Concat(Excluded.Where(e => !e.IsSafety).Select(e => e.Food));

    /// <summary>
    /// Sorts a library for a client. Of its retired foods only those are told that the client must not have: one may
    /// still stand in a draft.
    /// </summary>
    public static EligibleFoods For(
        FoodLibrary library,
        Diet diet,
        Tastes tastes,
        Adjustments adjustments
    )
    {
        ArgumentNullException.ThrowIfNull(library);
        ArgumentNullException.ThrowIfNull(diet);
        ArgumentNullException.ThrowIfNull(tastes);
        ArgumentNullException.ThrowIfNull(adjustments);
        var allowed = ImmutableArray.CreateBuilder<Food>();
        var excluded = ImmutableArray.CreateBuilder<ExcludedFood>();
        foreach (var food in library.All)
        {
            var reason = Unsafe(food, diet, adjustments);
            if (reason is not null)
                excluded.Add(new ExcludedFood(food, reason, IsSafety: true));
            else if (
                (Unwanted(food, diet, tastes) ?? Unsuited(food, diet, tastes, adjustments)) is
                { } why
            )
                excluded.Add(new ExcludedFood(food, why, IsSafety: false));
            else
                allowed.Add(food);
        }
        foreach (var food in library.Retired)
            if (Unsafe(food, diet, adjustments) is { } reason)
                excluded.Add(new ExcludedFood(food, reason, IsSafety: true));
        return new EligibleFoods(allowed.ToImmutable(), excluded.ToImmutable());
    }

    /// <summary>The medical reasons: allergy, coeliac disease, intolerances, pregnancy.</summary>
    private static string? Unsafe(Food food, Diet diet, Adjustments adjustments)
    {
        if (food.Allergens.FirstOrNull(diet.Allergies.Contains) is { } allergen)
            return $"allergy: {allergen.InWords()}";
        if (food.Allergens.FirstOrNull(adjustments.ExcludedAllergens.Contains) is { } gluten)
            return $"excluded by screening: {gluten.InWords()}";
        if ((food.Traits & adjustments.ExcludedTraits) is not FoodTraits.None and var traits)
            return $"excluded by screening: {traits.InWords()}";
        if (adjustments.NoFructoseAtAll && food.Per100G.FructoseLoadG > TraceOfSugarG)
            return "excluded by screening: fructose or sucrose";
        if (adjustments.NoSucroseAtAll && food.Per100G.SucroseCeilingG > TraceOfSugarG)
            return "excluded by screening: sucrose";
        if (adjustments.CaffeineMaxMgPerDay is 0 && food.Per100G.CaffeineMg > 0)
            return "excluded by screening: caffeine";
        return adjustments.LactoseMaxPerOccasionG is 0 && !food.IsLactoseFree
            ? "excluded by screening: lactose"
            : null;
    }

    /// <summary>
    /// What analyses of plain rice and potato find, g per 100 g (own rule): without it nothing would be left to eat. The
    /// metabolic team, whose clearance such a plan needs anyway, decides about it.
    /// </summary>
    private const decimal TraceOfSugarG = 0.1m;

    private static string? Unwanted(Food food, Diet diet, Tastes tastes)
    {
        if (tastes.Dislikes.Contains(food.Id))
            return "disliked";
        if ((food.Traits & (diet.Refused | Alcohol)) is not FoodTraits.None and var refused)
            return $"refused: {refused}";
        var flesh = food.Traits & (FoodTraits.Meat | FoodTraits.Pork | FoodTraits.Beef);
        return diet.Pattern switch
        {
            DietPattern.Pescatarian when flesh != FoodTraits.None => "not pescatarian",
            DietPattern.Vegetarian when !food.IsVegetarian => "not vegetarian",
            DietPattern.Vegan when !food.IsVegan => "not vegan",
            _ => null,
        };
    }

    private const FoodTraits Alcohol = FoodTraits.Alcohol;

    /// <summary>What does not suit the days before a race, or the client's kitchen.</summary>
    private static string? Unsuited(Food food, Diet diet, Tastes tastes, Adjustments adjustments)
    {
        if (
            food.Is(FoodTraits.HighResidue)
            && !adjustments.NoLowResidue
            && !tastes.Tolerated.Contains(food.Id)
        )
            return "rich in residue: left out in the last days";
        return
            diet.Kitchen.Contains(KitchenLimit.NoCooker)
            && food.Roles.All(r => NeedsCooking.Contains(r.Role))
            ? "needs a cooker"
            : null;
    }

    private static readonly ImmutableHashSet<MealRole> NeedsCooking =
    [
        MealRole.Porridge,
        MealRole.Pancake,
        MealRole.Pasta,
        MealRole.Rice,
        MealRole.Noodles,
        MealRole.Potato,
        MealRole.Grain,
        MealRole.Pizza,
        MealRole.SavouryCake,
    ];
}

internal static class AllergenSearch
{
    public static Allergen? FirstOrNull(
        this ImmutableArray<Allergen> allergens,
        Func<Allergen, bool> match
    )
    {
        foreach (var allergen in allergens)
            if (match(allergen))
                return allergen;
        return null;
    }
}
