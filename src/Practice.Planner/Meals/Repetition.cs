using Practice.Domain.Foods;
using Practice.Domain.Plans;
using Practice.Planner.Model;

namespace Practice.Planner.Meals;

/// <summary>How often a kind of food, a food or a meal comes in one day. Common practice, no source.</summary>
internal static class Repetition
{
    /// <summary>Sweets and chocolate: once a day.</summary>
    public const int MostConfectionery = 1;

    /// <summary>A family of foods in one day, at the most.</summary>
    public static int MostOfFamily(IReadOnlyCollection<Item> family, MenuStyle style)
    {
        if (family.Any(i => MealParts.IsStaple(i.Role)))
            return style == MenuStyle.Repeat ? 2 : 1;
        if (family.Any(i => i.Role is MealRole.Bread or MealRole.Drink or MealRole.Spread))
            return 3;
        if (family.Any(i => i.Role == MealRole.Porridge || i.Food.Group == FoodGroup.Dessert))
            return 1;
        return 2;
    }

    /// <summary>One food in one day, at the most.</summary>
    public static int MostOfFood(Food food) =>
        food.Roles.Any(r => r.Role is MealRole.Protein or MealRole.Vegetable or MealRole.Salad)
            ? 1
            : 2;

    /// <summary>One kind of main meal in one day, at the most.</summary>
    public static int MostOfMainMeal(MenuStyle style) => style == MenuStyle.Repeat ? 2 : 1;

    /// <summary>One kind of snack in one day, at the most.</summary>
    public const int MostOfSnack = 2;

    /// <summary>Foods whose return on another day nobody minds.</summary>
    public static bool MayReturn(MealRole role) =>
        role
            is MealRole.Milk
                or MealRole.Vegetable
                or MealRole.Salad
                or MealRole.SideBread
                or MealRole.SideFlatbread
                or MealRole.Topping;

    /// <summary>Foods that make a meal what it is: their return is noticed most.</summary>
    public static bool IsNoticed(MealRole role) =>
        MealParts.IsStaple(role)
        || role
            is MealRole.Protein
                or MealRole.Cereal
                or MealRole.Bread
                or MealRole.PastaSauce
                or MealRole.RiceSauce;
}
