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

        if (
            Grams(MealRole.PastaSauce) < 0.2m * (Grams(MealRole.Pasta) + Grams(MealRole.Grain))
            && !Eats("pesto")
        )
            yield return "pasta that is hardly sauced";
        if (Grams(MealRole.RiceSauce) < 0.1m * (Grams(MealRole.Rice) + Grams(MealRole.Noodles)))
            yield return "rice that is hardly sauced";
        if (Has(MealRole.Filling) && Eats("cracker"))
            yield return "a sandwich of crispbread";
        if (
            (Has(MealRole.Rice) || Has(MealRole.Noodles) || Has(MealRole.Pasta))
            && plate.Any(p => p.FoodId is "beetroot" or "parsnip" or "baked-beans")
        )
            yield return "northern roots or baked beans with rice, noodles or pasta";
        if (Drinks("shake", "milk", "kefir") && Drinks("soft-drink", "squash"))
            yield return "a milky drink with lemonade";
        if (
            Has(MealRole.Cereal)
            && plate.Any(p =>
                p.Role == MealRole.Topping && foods[p.FoodId].Family is "syrup" or "jam"
            )
        )
            yield return "syrup or jam on cereal";

        foreach (var portion in plate)
        {
            if (
                portion.Serving.Unit == "biscuit"
                && portion.Steps * portion.Serving.UnitsPerStep > 9
            )
                yield return $"{portion.Steps} times {portion.Serving.UnitsPerStep} biscuits";
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

        decimal Grams(MealRole role) => plate.Where(p => p.Role == role).Sum(p => p.Grams);

        bool Eats(string family) => plate.Any(p => foods[p.FoodId].Family == family);

        bool Drinks(params string[] families) =>
            plate.Any(p => p.Role == MealRole.Drink && families.Contains(foods[p.FoodId].Family));
    }

    private static decimal CupOf(Food food) =>
        food.Serving.Measures.FirstOrDefault(m => m.Name == "cup")?.Grams ?? 40;
}
