using Practice.Domain.Foods;
using Practice.Domain.Plans;

namespace Practice.Planner.Meals;

/// <summary>
/// Gluten-free, lactose-free and plant-based stand-ins are for those who cannot have the original. Who that is, the
/// foods tell: where more than half of the usual originals are missing, the stand-in is wanted.
/// </summary>
internal sealed class StandIns(MenuRequest request)
{
    private readonly HashSet<string> _served = [.. request.Foods.Select(f => f.Id)];

    private readonly bool _limitsLactose = request.Days.Any(d =>
        d.Limits.LactoseMaxPerOccasionG is not null || d.Limits.LactoseMaxPerDayG is not null
    );

    public bool IsWanted(Food standIn)
    {
        if (_limitsLactose && standIn.Group == FoodGroup.Dairy)
            return true;
        var originals = FoodLibrary.Standard.All.Where(f => IsOriginalOf(standIn, f)).ToList();
        if (originals.Exists(Everyday.Is))
            originals.RemoveAll(f => !Everyday.Is(f));
        return 2 * originals.Count(f => _served.Contains(f.Id)) < originals.Count;
    }

    // tofu and seitan stand in for meat and fish, the others for what bears the same name
    private static bool IsOriginalOf(Food standIn, Food food) =>
        !food.Is(FoodTraits.Substitute)
        && (
            standIn.Group == FoodGroup.Protein
                ? food.Group == FoodGroup.Protein
                    && (food.Traits & (FoodTraits.Meat | FoodTraits.Seafood)) != FoodTraits.None
                : food.Family == standIn.Family
        );
}
