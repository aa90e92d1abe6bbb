using System.Collections.Immutable;

namespace Practice.Domain.Foods.Own;

/// <summary>Where the library's foods of a role stand and when they are served: what to begin with where nobody said.</summary>
public static class UsualPlaces
{
    private static readonly ILookup<MealRole, Food> OfRole = FoodLibrary
        .Standard.All.SelectMany(food => food.Roles.Select(part => (part.Role, Food: food)))
        .ToLookup(played => played.Role, played => played.Food);

    /// <summary>Sittings that at least half of the library's foods of one of the roles suit.</summary>
    public static ImmutableArray<OccasionKind> Occasions(ImmutableArray<MealRole> roles) =>
        [
            .. Enum.GetValues<OccasionKind>()
                .Where(kind =>
                    roles.Any(role =>
                        2 * OfRole[role].Count(food => food.Occasions.Contains(kind))
                        >= OfRole[role].Count()
                    )
                ),
        ];

    /// <summary>The section that most of the library's foods of the first role stand in; null without a role.</summary>
    public static FoodGroup? Group(ImmutableArray<MealRole> roles) =>
        roles.IsEmpty ? null : OfRole[roles[0]].CountBy(food => food.Group).MaxBy(c => c.Value).Key;
}
