using Practice.Domain.Foods;

namespace Practice.Domain.Tests.Foods;

/// <summary>Every diet must find a choice for every part of a meal, or the planner has nothing to plan with.</summary>
public sealed class LibraryCoverageTests
{
    private static readonly Dictionary<string, Func<Food, bool>> Diets = new()
    {
        ["everything"] = _ => true,
        ["gluten-free"] = food => food.IsGlutenFree,
        ["lactose-free"] = food => food.IsLactoseFree,
        ["vegan"] = food => food.IsVegan,
        ["vegetarian"] = food => food.IsVegetarian,
        ["halal"] = food => !food.Is(FoodTraits.Pork) && !food.Is(FoodTraits.Alcohol),
        ["low-FODMAP"] = food => !food.Is(FoodTraits.HighFodmap),
        ["nut-free"] = food =>
            !food.Allergens.Contains(Allergen.TreeNuts)
            && !food.Allergens.Contains(Allergen.Peanuts),
        ["gluten-free and lactose-free"] = food => food.IsGlutenFree && food.IsLactoseFree,
    };

    public static TheoryData<string, MealRole> EssentialRolesByDiet() =>
        [
            .. from diet in Diets.Keys
            from role in new[]
            {
                MealRole.Bread,
                MealRole.Spread,
                MealRole.Filling,
                MealRole.Cereal,
                MealRole.Porridge,
                MealRole.Milk,
                MealRole.Topping,
                MealRole.Fruit,
                MealRole.Drink,
                MealRole.Shake,
                MealRole.SweetBite,
                MealRole.SavouryBite,
                MealRole.Rice,
                MealRole.Pasta,
                MealRole.Noodles,
                MealRole.Potato,
                MealRole.Grain,
                MealRole.PastaSauce,
                MealRole.RiceSauce,
                MealRole.Protein,
                MealRole.Vegetable,
                MealRole.Dessert,
                MealRole.Yoghurt,
            }
            select (diet, role),
        ];

    [Theory]
    [MemberData(nameof(EssentialRolesByDiet))]
    public void Each_diet_has_three_low_residue_choices_for_each_part_of_a_meal(
        string diet,
        MealRole role
    )
    {
        var choices = FoodLibrary
            .Standard.All.Where(Diets[diet])
            .Where(food => !food.Is(FoodTraits.HighResidue))
            .Where(food => food.Roles.Any(r => r.Role == role))
            .Select(food => food.Id)
            .ToArray();
        Assert.True(choices.Length >= 3, $"{diet}, {role}: only {string.Join(", ", choices)}");
    }

    [Theory]
    [InlineData("african")]
    [InlineData("british-irish")]
    [InlineData("east-asian")]
    [InlineData("european")]
    [InlineData("latin-american")]
    [InlineData("middle-eastern")]
    [InlineData("north-african")]
    [InlineData("north-american")]
    [InlineData("south-asian")]
    public void Each_cuisine_has_foods_of_its_own(string cuisine) =>
        Assert.True(FoodLibrary.Standard.All.Count(food => food.Cuisine == cuisine) >= 5);

    [Fact]
    public void There_are_no_more_cuisines_than_these() =>
        Assert.Equal(
            9,
            FoodLibrary
                .Standard.All.Select(food => food.Cuisine)
                .OfType<string>()
                .Distinct()
                .Count()
        );

    [Fact]
    public void Every_part_of_a_meal_has_foods()
    {
        var played = FoodLibrary.Standard.All.SelectMany(food => food.Roles).Select(r => r.Role);
        Assert.Empty(Enum.GetValues<MealRole>().Except(played));
    }
}
