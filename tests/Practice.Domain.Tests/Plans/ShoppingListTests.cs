using Practice.Domain.Foods;
using Practice.Domain.Plans;
using Practice.Domain.Tests.Handouts;

namespace Practice.Domain.Tests.Plans;

public sealed class ShoppingListTests
{
    private static readonly RaceWeekPlan Plan = new SamplePlan { WindowHours = 84 }.Plan();

    private static ShoppingItem Item(string name) =>
        ShoppingList.For(Plan).SelectMany(s => s.Items).Single(i => i.Name == name);

    [Fact]
    public void Nothing_of_the_plan_is_missing_and_nothing_is_added()
    {
        var planned = Plan.Days.SelectMany(d => d.Occasions).SelectMany(o => o.Portions).ToList();
        var items = ShoppingList.For(Plan).SelectMany(s => s.Items).ToList();
        Assert.Equal(planned.Sum(p => p.Grams), items.Sum(i => i.Needed.Grams));
        Assert.Equal(planned.Count, items.Sum(i => i.Times));
        Assert.Equal(planned.Select(p => p.FoodId).Distinct().Count(), items.Count);
    }

    [Fact]
    public void Sections_come_in_the_order_of_a_shop_and_foods_by_name()
    {
        var sections = ShoppingList.For(Plan);
        Assert.Equal(sections.Select(s => s.Group).Order(), sections.Select(s => s.Group));
        Assert.All(
            sections,
            s =>
                Assert.Equal(
                    s.Items.Select(i => i.Name).Order(StringComparer.InvariantCulture),
                    s.Items.Select(i => i.Name)
                )
        );
        Assert.Equal("Bread and bakery", sections[0].Title);
    }

    [Fact]
    public void Days_are_summed_and_rounded_up_to_what_can_be_bought()
    {
        Assert.Equal("800 g", Plain(Item("White rice, boiled").ToBuy(HouseholdUnits.Metric)));
        Assert.Equal("150 g", Plain(Item("Corn flakes").ToBuy(HouseholdUnits.Metric)));
        Assert.Equal(
            "6 slices (162 g)",
            Plain(
                (
                    Item("White toast") with
                    {
                        Needed = Item("White toast").Needed with { Steps = 6 },
                    }
                ).ToBuy(HouseholdUnits.Metric)
            )
        );
        Assert.Equal("700 ml", Plain(Item("Skimmed milk").ToBuy(HouseholdUnits.Metric)));
    }

    [Theory]
    [InlineData(1, "1 bagel (105 g)")]
    [InlineData(2, "1 bagel (105 g)")]
    [InlineData(5, "3 bagels (315 g)")]
    public void Half_a_piece_can_not_be_bought(int halves, string bought)
    {
        var bagels = Item("Bagel, plain");
        var item = bagels with { Needed = bagels.Needed with { Steps = halves } };
        Assert.Equal(bought, Plain(item.ToBuy(HouseholdUnits.Metric)));
    }

    [Fact]
    public void Much_is_said_in_kilograms_and_litres()
    {
        var rice = Item("White rice, boiled");
        var milk = Item("Skimmed milk");
        Assert.Equal(
            "1.3 kg",
            Plain(
                (rice with { Needed = rice.Needed with { Steps = 25 } }).ToBuy(
                    HouseholdUnits.Metric
                )
            )
        );
        Assert.Equal(
            "1.3 litres",
            Plain(
                (milk with { Needed = milk.Needed with { Steps = 25 } }).ToBuy(
                    HouseholdUnits.Metric
                )
            )
        );
    }

    [Fact]
    public void Number_free_lists_count_pieces_and_meals_in_words()
    {
        var bagels = Item("Bagel, plain");
        Assert.Equal("two bagels", bagels.ToBuyInWords(HouseholdUnits.Metric));
        Assert.Equal(
            "enough for two meals or snacks",
            Item("White rice, boiled").ToBuyInWords(HouseholdUnits.Metric)
        );
    }

    private static string Plain(string text) => text.Replace('\u00A0', ' ');
}
