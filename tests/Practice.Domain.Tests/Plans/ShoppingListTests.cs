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

    [Theory]
    // 800 g boiled are cooked from 286 g
    [InlineData("White rice, boiled", 16, "1 bag of 500 g (needs 290 g)")]
    [InlineData("White rice, boiled", 42, "1 bag of 1 kg (needs 750 g)")]
    [InlineData("Corn flakes", 7, "1 box of 375 g (needs 110 g)")]
    [InlineData("White toast", 6, "1 loaf of 400 g (needs 6 slices)")]
    [InlineData("Skimmed milk", 14, "1 bottle of 2 pints (needs 700 ml)")]
    [InlineData("Skimmed milk", 25, "3 bottles of 1 pint (needs 1.25 litres)")]
    [InlineData("Bagel, plain", 1, "1 pack of 5 (needs 1 bagel)")]
    [InlineData("Bagel, plain", 11, "2 packs of 5 (needs 6 bagels)")]
    public void Days_are_summed_and_rounded_up_to_packs_that_shops_sell(
        string name,
        int steps,
        string bought
    ) => Assert.Equal(bought, Bought(name, steps, HouseholdUnits.Metric));

    [Theory]
    [InlineData("White rice, boiled", 16, "1 bag of 1 lb (needs 290 g)")]
    [InlineData("Skimmed milk", 14, "1 carton of 1 quart (needs 24 fl oz, 700 ml)")]
    [InlineData("Bagel, plain", 11, "1 pack of 6 (needs 6 bagels)")]
    public void American_shops_have_packs_of_their_own(string name, int steps, string bought) =>
        Assert.Equal(bought, Bought(name, steps, HouseholdUnits.UsCustomary));

    [Theory]
    [InlineData("Banana, ripe", 1, "1 banana (118 g)")]
    [InlineData("Carrots, soft-cooked", 3, "150 g")]
    public void What_is_sold_loose_or_nobody_knows_the_pack_of_is_rounded_by_itself(
        string name,
        int steps,
        string bought
    ) => Assert.Equal(bought, Bought(name, steps, HouseholdUnits.Metric));

    [Fact]
    public void What_is_cooked_dry_is_looked_for_dry_in_the_shop()
    {
        Assert.Equal(
            "White rice, dry",
            Item("White rice, boiled").NameInShop(HouseholdUnits.Metric)
        );
        Assert.Equal("Banana, ripe", Item("Banana, ripe").NameInShop(HouseholdUnits.Metric));
    }

    private static string Bought(string name, int steps, HouseholdUnits units)
    {
        var item = Item(name);
        return Plain((item with { Needed = item.Needed with { Steps = steps } }).ToBuy(units));
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
