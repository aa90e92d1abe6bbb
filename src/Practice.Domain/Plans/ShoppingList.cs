using System.Collections.Immutable;
using Practice.Domain.Foods;

namespace Practice.Domain.Plans;

/// <summary>A section of a shop with what to take from it.</summary>
/// <param name="Group">Kind of food.</param>
/// <param name="Title">Its name on the list.</param>
/// <param name="Items">What to buy, by name.</param>
public sealed record ShoppingSection(
    FoodGroup Group,
    string Title,
    ImmutableArray<ShoppingItem> Items
);

/// <summary>What the days of a plan need, by section of a shop.</summary>
public static class ShoppingList
{
    /// <summary>The list of the loading days; sections in the order of a shop, without empty ones.</summary>
    public static ImmutableArray<ShoppingSection> For(RaceWeekPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return Of(plan.Days, plan.Units);
    }

    /// <summary>The list of the whole week: loading days, race morning and recovery.</summary>
    public static ImmutableArray<ShoppingSection> ForWeek(RaceWeekPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return Of(plan.EveryDay, plan.Units);
    }

    private static ImmutableArray<ShoppingSection> Of(
        IEnumerable<PlanDay> days,
        HouseholdUnits units
    )
    {
        return
        [
            .. days.SelectMany(d => d.Occasions)
                .SelectMany(o => o.Portions)
                // a food whose serving was edited between two portions can not be counted together
                .GroupBy(p => (p.FoodId, p.Serving with { Measures = [] }))
                .Select(g => Sum([.. g]))
                .GroupBy(i => i.Needed.Group)
                .OrderBy(g => g.Key)
                .Select(g => new ShoppingSection(
                    g.Key,
                    Title(g.Key, units),
                    [.. g.OrderBy(i => i.Name, StringComparer.InvariantCulture)]
                )),
        ];
    }

    private static ShoppingItem Sum(IReadOnlyList<Portion> portions) =>
        new(
            portions[0].Name,
            portions[0] with
            {
                Steps = portions.Sum(p => p.Steps),
            },
            portions.Count
        );

    private static string Title(FoodGroup group, HouseholdUnits units) =>
        group switch
        {
            FoodGroup.Bakery => "Bread and bakery",
            FoodGroup.Cereal => "Breakfast cereals",
            FoodGroup.Starch => "Rice, pasta and grains",
            FoodGroup.Vegetable => "Vegetables",
            FoodGroup.Fruit => "Fruit",
            FoodGroup.Dairy => "Dairy and alternatives",
            FoodGroup.Protein => "Protein foods",
            FoodGroup.Spread => "Jam, honey and spreads",
            FoodGroup.Sauce => "Sauces",
            FoodGroup.Snack when units == HouseholdUnits.UsCustomary => "Cookies and snacks",
            FoodGroup.Snack => "Biscuits and snacks",
            FoodGroup.Dessert => "Desserts",
            FoodGroup.Drink => "Drinks",
            FoodGroup.Sports => "Sports nutrition",
            _ => group.ToString(),
        };
}
