using System.Collections.Immutable;
using System.Globalization;
using Practice.Domain.Foods;

namespace Practice.Domain.Plans;

/// <summary>A food to buy, for the whole plan.</summary>
/// <param name="Name">Name as planned.</param>
/// <param name="Needed">All its portions as one: what the plan eats.</param>
/// <param name="Times">In how many sittings it is eaten.</param>
public sealed record ShoppingItem(string Name, Portion Needed, int Times)
{
    private const char NoBreak = '\u00A0';

    /// <summary>
    /// What to buy, rounded up to what can be bought: whole pieces, 50 g or 100 g, 100 ml. Weights are as eaten, so
    /// cooked where the food is eaten cooked.
    /// </summary>
    public string ToBuy(HouseholdUnits units)
    {
        if (Needed.Serving.Style == ServingStyle.Counted)
            return PortionWords.Full(WholePieces, units);
        var household = PortionWords.Household(Needed, units);
        return units == HouseholdUnits.Metric || household == PortionWords.Grams(Needed)
            ? Scales
            : $"{household} ({Scales})";
    }

    /// <summary>What to buy, without any number beside a unit.</summary>
    public string ToBuyInWords(HouseholdUnits units) =>
        Needed.Serving.Style == ServingStyle.Counted ? PortionWords.NumberFree(WholePieces, units)
        : Times == 1 ? PortionWords.NumberFree(Needed, units)
        : $"enough for {KitchenNumber.Phrase(Times, "meal or snack", "meals or snacks")}";

    private Portion WholePieces
    {
        get
        {
            var perStep = Needed.Serving.UnitsPerStep;
            var steps = decimal.Ceiling(Needed.Steps * perStep) / perStep;
            return Needed with { Steps = (int)decimal.Ceiling(steps) };
        }
    }

    private string Scales
    {
        get
        {
            var poured = Needed.Serving.Style == ServingStyle.Poured;
            var amount = poured ? Needed.Millilitres : Needed.Grams;
            var step = poured || amount > 500 ? 100 : 50;
            var rounded = decimal.Ceiling(amount / step) * step;
            return rounded < 1000
                ? Number(rounded) + NoBreak + (poured ? "ml" : "g")
                : Number(rounded / 1000) + NoBreak + (poured ? "litres" : "kg");
        }
    }

    private static string Number(decimal amount) =>
        amount.ToString("0.#", CultureInfo.InvariantCulture);
}

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
                .GroupBy(p => (p.FoodId, p.Serving))
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
