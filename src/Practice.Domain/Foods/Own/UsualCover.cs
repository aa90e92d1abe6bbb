using System.Collections.Frozen;

namespace Practice.Domain.Foods.Own;

/// <summary>
/// How much one step of a food covers, or needs to be covered, in a role: what a gram does in the middle one of the
/// library's foods of that role. Own rule: a practice need not think in cover units.
/// </summary>
internal static class UsualCover
{
    private static readonly Lazy<FrozenDictionary<MealRole, decimal>> PerGram = new(() =>
        FoodLibrary
            .Standard.All.SelectMany(food =>
                food.Roles.Select(part => (part.Role, Cover: part.Cover / food.Serving.StepGrams))
            )
            .GroupBy(part => part.Role, part => part.Cover)
            .ToFrozenDictionary(role => role.Key, role => Middle([.. role.Order()]))
    );

    public static FoodRole Of(MealRole role, decimal stepGrams)
    {
        var perGram = PerGram.Value.GetValueOrDefault(role);
        return new FoodRole(
            role,
            perGram == 0 ? 0 : (int)Math.Clamp(Math.Round(perGram * stepGrams), 1, 500)
        );
    }

    private static decimal Middle(decimal[] ordered) => ordered[ordered.Length / 2];
}
