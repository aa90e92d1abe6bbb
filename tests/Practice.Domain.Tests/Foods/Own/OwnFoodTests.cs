using NodaTime;
using Practice.Domain.Foods;
using Practice.Domain.Foods.Own;
using Practice.Domain.Plans;

namespace Practice.Domain.Tests.Foods.Own;

/// <summary>What a practice wrote down becomes a food like any other.</summary>
public sealed class OwnFoodTests
{
    [Fact]
    public void Pieces_are_served_as_counted()
    {
        var halved = SampleSheet.Bar with
        {
            Serving = SampleSheet.Bar.Serving with { CanBeHalved = true, Least = 0.5m },
        };
        var serving = Food(halved).Serving;
        Assert.Equal((0.5m, 22.5m), (serving.UnitsPerStep, serving.StepGrams));
        Assert.Equal([1, 2, 3, 4, 5, 6], serving.Steps);
        Assert.Equal([1, 2, 3], Food(SampleSheet.Bar).Serving.Steps);
    }

    [Fact]
    public void Cooked_starch_is_served_by_50_g_and_covered_like_the_librarys()
    {
        var rice = Food(SampleSheet.Rice);
        Assert.Equal([2, 3, 4, 5, 6, 7], rice.Serving.Steps);
        Assert.Equal(50, rice.Serving.StepGrams);
        var white = FoodLibrary.Standard.Find("white-rice")!;
        Assert.Equal(Assert.Single(white.Roles), Assert.Single(rice.Roles));
    }

    [Fact]
    public void A_drink_is_as_heavy_as_what_is_in_it_makes_it()
    {
        var drink = Food(SampleSheet.Drink);
        // 1 + 0.00386c + 0.0000128c2 with c = 10 (docs/foods.md), by 50 ml
        Assert.Equal(52.0m, drink.Serving.StepGrams);
        Assert.True(drink.IsLiquid);
        Assert.Equal(200, Portion.Of(drink, MealRole.Drink, 4).Millilitres);
    }

    [Fact]
    public void What_is_not_said_stays_unknown_and_water_is_the_rest()
    {
        var bar = Food(SampleSheet.Bar).Per100G;
        Assert.Null(bar.PotassiumMg);
        Assert.Null(bar.GlucoseG);
        Assert.Equal(15, bar.WaterG);
        Assert.Equal(0, bar.LactoseG);
        var milky = SampleSheet.Bar with { Allergens = [Allergen.Milk] };
        Assert.Null(Food(milky).Per100G.LactoseG);
    }

    [Fact]
    public void A_food_keeps_its_key_through_every_change()
    {
        var food = OwnFood.Of(Guid.NewGuid(), SampleSheet.Bar);
        var key = food.Food.Id;
        food.Revise(SampleSheet.Rice);
        Assert.Equal(key, food.Food.Id);
        Assert.True(food.Food.IsOwn);
    }

    [Fact]
    public void A_practice_finds_its_foods_and_measures_among_the_librarys()
    {
        var bar = OwnFood.Of(Guid.NewGuid(), SampleSheet.Bar);
        var gone = OwnFood.Of(Guid.NewGuid(), SampleSheet.Drink);
        gone.Retire(Instant.FromUtc(2027, 1, 1, 0, 0));
        var rice = FoodLibrary.Standard.Find("white-rice")!;
        var bowl = OwnMeasure.Of(Guid.NewGuid(), rice, new("blue bowl", "blue bowls", 220));

        var foods = FoodLibrary.With([bar, gone], [bowl]);

        Assert.Contains(bar.Food.Id, foods.Search("fig bar").Select(f => f.Id));
        Assert.Empty(foods.Search("cordial"));
        Assert.Equal(SampleSheet.Drink.Name, foods.NameOf(gone.Food.Id));
        Assert.Equal(
            "about a blue bowl",
            PortionWords
                .Household(
                    Portion.Of(foods.Find("white-rice")!, MealRole.Rice, 4) with
                    {
                        Steps = 4,
                    },
                    HouseholdUnits.Metric
                )
                .Replace('\u00A0', ' ')
        );
        Assert.Equal(FoodLibrary.Standard.All.Length + 1, foods.All.Length);
        Assert.Same(FoodLibrary.Standard, FoodLibrary.With([], []));
    }

    [Theory]
    [InlineData("white-rice", "", "bowls", 220, "needs a name")]
    [InlineData("white-rice", "bowl", "bowls", 0, "holds more than 0 g")]
    [InlineData("white-rice", "2 bowls", "bowls", 220, "begin with a letter")]
    [InlineData("bagel", "bowl", "bowls", 220, "is counted in bagels")]
    public void A_measure_that_cannot_be_used_is_refused_with_words(
        string foodId,
        string name,
        string plural,
        int grams,
        string words
    )
    {
        var food = FoodLibrary.Standard.Find(foodId)!;
        var refused = Assert.Throws<ArgumentException>(() =>
            OwnMeasure.Of(Guid.NewGuid(), food, new(name, plural, grams))
        );
        Assert.Contains(words, refused.Message, StringComparison.Ordinal);
    }

    private static Food Food(FoodSheet sheet) => OwnFood.Of(Guid.NewGuid(), sheet).Food;
}
