using Practice.Domain.Foods;
using Practice.Domain.Plans;

namespace Practice.Domain.Tests.Planner;

/// <summary>
/// Reads a menu as a dietitian would, from nothing but the portions on it: knows no pattern and no price of the planner.
/// </summary>
internal static class MenuReading
{
    public static IEnumerable<string> Complaints(MenuRequest request, IEnumerable<PlanDay> days) =>
        days.SelectMany(day => OfDay(request, day));

    private static IEnumerable<string> OfDay(MenuRequest request, PlanDay day)
    {
        var foods = request.Foods.ToDictionary(f => f.Id);
        var sweets = day
            .Occasions.SelectMany(o => o.Portions)
            .Count(p => foods[p.FoodId].Is(FoodTraits.Confectionery));
        if (sweets > 1)
            yield return $"{day.Date}: confectionery {sweets} times";
        foreach (var occasion in day.Occasions)
        foreach (var complaint in OfPlate(request, foods, occasion))
            yield return $"{day.Date} {occasion.Kind}: {complaint} ({string.Join(", ", occasion.Portions.Select(p => $"{p.Steps} {p.FoodId}"))})";
    }

    private static IEnumerable<string> OfPlate(
        MenuRequest request,
        Dictionary<string, Food> foods,
        Occasion occasion
    )
    {
        var plate = occasion.Portions;
        if (plate.IsEmpty)
            yield return "an empty plate";
        if (plate.Length > 6)
            yield return "too many foods";
        if (Count(MealRole.Drink) > 2)
            yield return "more than two drinks";
        foreach (var twice in plate.GroupBy(p => foods[p.FoodId].Family).Where(g => g.Count() > 1))
            yield return $"{twice.Key} twice";

        if (Has(MealRole.Bread) != (Has(MealRole.Spread) || Has(MealRole.Filling)))
            yield return "bread and what goes on it do not come together";
        if ((Has(MealRole.Cereal) || Has(MealRole.Porridge)) != Has(MealRole.Milk))
            yield return "dry cereal, or milk on nothing";
        if (Has(MealRole.Pancake) != Has(MealRole.Syrup))
            yield return "pancakes and syrup do not come together";
        if (
            Has(MealRole.Topping)
            && !(Has(MealRole.Cereal) || Has(MealRole.Porridge) || Has(MealRole.Yoghurt))
        )
            yield return "a topping on nothing";
        if ((Has(MealRole.Pasta) || Has(MealRole.Grain)) && !Has(MealRole.PastaSauce))
            yield return "dry pasta or grain";
        if ((Has(MealRole.Rice) || Has(MealRole.Noodles)) != Has(MealRole.RiceSauce))
            yield return "dry rice, or sauce on nothing";
        if (Has(MealRole.SavouryCake) != Has(MealRole.Dip))
            yield return "savoury cakes and their dip do not come together";

        foreach (var portion in plate)
        {
            var food = foods[portion.FoodId];
            if (!food.Serving.Steps.Contains(portion.Steps))
                yield return $"{portion.Steps} steps of {food.Id} are not served";
            if (portion.Serving.Unit == "slice" && portion.Steps > 8)
                yield return $"{portion.Steps} slices";
            if (portion.Role == MealRole.Cereal && portion.Grams > 3 * CupOf(food))
                yield return $"{portion.Grams} g of cereal";
            if (
                food.Family == "egg"
                && portion.Serving.Unit == "egg"
                && portion.Steps * food.Serving.UnitsPerStep % 1 != 0
            )
                yield return "half an egg";
            if (request.Tastes.Suspect.Contains(food.Id))
                yield return $"{food.Id} is suspect";
        }

        int Count(MealRole role) => plate.Count(p => p.Role == role);

        bool Has(MealRole role) => Count(role) > 0;
    }

    private static decimal CupOf(Food food) =>
        food.Serving.Measures.FirstOrDefault(m => m.Name == "cup")?.Grams ?? 40;
}
