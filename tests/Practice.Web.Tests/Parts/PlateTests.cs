using Bunit;
using Practice.Domain.Foods;
using Practice.Domain.Plans;
using Practice.Web.Features.Gallery;
using Practice.Web.Parts.Plates;

namespace Practice.Web.Tests.Parts;

public class PlateTests : BunitContext
{
    // the library serves bagels in steps of half a bagel: 2, 3, 4, 6
    private static readonly Portion TwoBagels = Samples.Portion("bagel", MealRole.Bread, 4);

    [Fact]
    public async Task The_stepper_goes_to_the_next_amount_a_person_would_serve()
    {
        var served = new List<int>();
        var stepper = Render<HouseholdStepper>(p =>
            p.Add(s => s.Portion, TwoBagels).Add(s => s.OnServe, served.Add)
        );
        await stepper.Find("button[aria-label='More Bagel, plain']").ClickAsync();
        await stepper.Find("button[aria-label='Less Bagel, plain']").ClickAsync();
        Assert.Equal([6, 3], served);
    }

    [Fact]
    public void The_stepper_stops_at_the_smallest_and_the_largest_serving()
    {
        bool IsDisabled(int steps, string way) =>
            Render<HouseholdStepper>(p => p.Add(s => s.Portion, TwoBagels with { Steps = steps }))
                .Find($"button[aria-label='{way} Bagel, plain']")
                .HasAttribute("disabled");
        var steps = TwoBagels.Serving.Steps;
        Assert.True(IsDisabled(steps[0], "Less"));
        Assert.False(IsDisabled(steps[0], "More"));
        Assert.True(IsDisabled(steps[^1], "More"));
    }

    [Fact]
    public void A_portion_is_said_in_the_readers_kitchen_words()
    {
        var juice = Samples.Portion("orange-juice", MealRole.Drink, 6);
        string Amount(HouseholdUnits units) =>
            Render<HouseholdStepper>(p => p.Add(s => s.Portion, juice).Add(s => s.Units, units))
                .Find(".amount strong")
                .TextContent;
        Assert.Contains("glass", Amount(HouseholdUnits.Metric), StringComparison.Ordinal);
        Assert.Contains("fl", Amount(HouseholdUnits.UsCustomary), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_row_asks_for_lock_swap_and_removal_of_its_own_food()
    {
        var asked = new List<string>();
        var card = Render<OccasionCard>(p =>
            p.Add(c => c.Occasion, Samples.Days[^1][OccasionKind.Breakfast])
                .Add(c => c.OnLock, l => asked.Add($"lock {l.FoodId} {l.Locked}"))
                .Add(c => c.OnSwap, food => asked.Add($"swap {food}"))
                .Add(c => c.OnRemove, food => asked.Add($"remove {food}"))
                .Add(c => c.OnAdd, () => asked.Add("add"))
        );
        await card.Find("button[aria-label='Lock Bagel, plain']").ClickAsync();
        await card.Find("button[aria-label='Lock Orange juice, smooth']").ClickAsync();
        await card.Find("button[aria-label='Swap Strawberry jam']").ClickAsync();
        await card.Find("button[aria-label='Take Strawberry jam off']").ClickAsync();
        await card.Find("button.add").ClickAsync();
        Assert.Equal(
            [
                "lock bagel True",
                "lock orange-juice False",
                "swap strawberry-jam",
                "remove strawberry-jam",
                "add",
            ],
            asked
        );
    }

    [Fact]
    public void An_issued_plate_can_only_be_read()
    {
        var card = Render<OccasionCard>(p =>
            p.Add(c => c.Occasion, Samples.Days[^1][OccasionKind.Breakfast])
                .Add(c => c.IsFixed, true)
        );
        Assert.Empty(card.FindAll("button"));
        Assert.Contains("2 bagels", card.Markup.Replace('\u00A0', ' '), StringComparison.Ordinal);
    }

    [Fact]
    public void A_small_sitting_may_be_eight_grams_off_and_a_large_one_its_share()
    {
        var supper = Samples.Days[^1][OccasionKind.Supper] with { Portions = [TwoBagels] };
        var grams = supper.Totals.CarbohydrateG;
        Assert.False(OccasionAim.IsOff(supper with { CarbohydrateAimG = grams - 8 }, 0));
        Assert.True(OccasionAim.IsOff(supper with { CarbohydrateAimG = grams - 8.1m }, 0));
        Assert.False(OccasionAim.IsOff(supper with { CarbohydrateAimG = grams / 1.15m }, 0.15m));
    }

    [Fact]
    public void Changes_are_told_as_more_less_added_taken_off_and_swapped()
    {
        var list = Render<ChangeList>(p =>
            p.Add(
                l => l.Changes,
                [
                    new(OccasionKind.Lunch, TwoBagels, TwoBagels with { Steps = 6 }),
                    new(OccasionKind.Lunch, TwoBagels, TwoBagels with { Steps = 2 }),
                    new(OccasionKind.Lunch, null, TwoBagels),
                    new(OccasionKind.Lunch, TwoBagels, null),
                    new(
                        OccasionKind.Lunch,
                        TwoBagels,
                        Samples.Portion("crumpet", MealRole.Bread, 2)
                    ),
                ]
            )
        );
        Assert.Equal(
            ["More", "Less", "Added", "Taken off", "Swapped"],
            list.FindAll(".kind").Select(k => k.TextContent.Trim())
        );
    }
}
