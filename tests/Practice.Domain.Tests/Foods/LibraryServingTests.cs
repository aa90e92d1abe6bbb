using Practice.Domain.Foods;

namespace Practice.Domain.Tests.Foods;

/// <summary>Portions come in what a person would put on a plate, in words of both kitchens.</summary>
public sealed class LibraryServingTests
{
    /// <summary>What can be cut and the rest kept: all else is served whole.</summary>
    private static readonly string[] Divisible =
    [
        "bagel",
        "muffin",
        "teacake",
        "roll",
        "naan",
        "flatbread",
        "piece",
        "pretzel",
        "banana",
        "apple",
        "pear",
        "peach",
        "nectarine",
        "tomato",
        "bowl",
        "bar",
        "tamale",
        "burrito",
    ];

    private static IEnumerable<Food> All => FoodLibrary.Standard.All;

    private static IEnumerable<Food> Of(ServingStyle style) =>
        All.Where(food => food.Serving.Style == style);

    [Fact]
    public void Counted_food_is_served_whole_unless_it_can_be_cut() =>
        Assert.All(
            Of(ServingStyle.Counted),
            food =>
                Assert.True(
                    food.Serving.UnitsPerStep % 1 == 0
                        || (
                            food.Serving.UnitsPerStep is 0.5m or 0.25m
                            && Divisible.Contains(food.Serving.Unit)
                        ),
                    food.Id
                )
        );

    [Fact]
    public void Drinks_are_poured_by_50_ml() =>
        Assert.All(
            Of(ServingStyle.Poured),
            food =>
            {
                Assert.Equal(50, food.Serving.UnitsPerStep);
                Assert.InRange(food.Serving.StepGrams, 49, 56);
            }
        );

    [Fact]
    public void Weighed_food_weighs_what_its_step_says() =>
        Assert.All(
            Of(ServingStyle.Weighed),
            food => Assert.Equal(food.Serving.UnitsPerStep, food.Serving.StepGrams)
        );

    [Theory]
    [InlineData(MealRole.Rice)]
    [InlineData(MealRole.Grain)]
    [InlineData(MealRole.Noodles)]
    public void Cooked_starch_is_weighed_by_50_g(MealRole role) =>
        Assert.All(
            All.Where(food => food.Roles.Any(r => r.Role == role)),
            food => Assert.Equal(50, food.Serving.StepGrams)
        );

    [Fact]
    public void No_serving_is_absurd() =>
        Assert.All(
            All,
            food =>
            {
                var grams = food.Serving.MaxSteps * food.Serving.StepGrams;
                var carbohydrate = food.Per100G.ForGrams(grams).CarbohydrateG;
                Assert.True(food.Serving.MaxSteps <= 12, food.Id);
                Assert.True(carbohydrate <= 190, $"{food.Id}: {carbohydrate} g at most");
                Assert.True(grams <= 620, $"{food.Id}: {grams} g at most");
            }
        );

    [Fact]
    public void Hosts_need_cover_and_what_goes_on_them_gives_it()
    {
        MealRole[] covered =
        [
            MealRole.Bread,
            MealRole.Spread,
            MealRole.Filling,
            MealRole.Cereal,
            MealRole.Porridge,
            MealRole.Milk,
            MealRole.Topping,
            MealRole.Pancake,
            MealRole.Syrup,
            MealRole.Pasta,
            MealRole.Rice,
            MealRole.Noodles,
            MealRole.Grain,
            MealRole.Potato,
            MealRole.SavouryCake,
            MealRole.Dip,
            MealRole.PastaSauce,
            MealRole.RiceSauce,
        ];
        Assert.All(
            All,
            food =>
                Assert.All(
                    food.Roles.Where(r => r.Role != MealRole.Yoghurt),
                    role => Assert.True(covered.Contains(role.Role) == role.Cover > 0, food.Id)
                )
        );
    }

    [Fact]
    public void Both_kitchens_have_their_words()
    {
        Assert.Equal(
            "Zucchini, peeled and soft-cooked",
            NameOf("courgette", HouseholdUnits.UsCustomary)
        );
        Assert.Equal(
            "Courgette, peeled and soft-cooked",
            NameOf("courgette", HouseholdUnits.Metric)
        );
        Assert.Equal(
            "cookies",
            Serving("ginger-biscuits").UnitPluralIn(HouseholdUnits.UsCustomary)
        );
        Assert.Equal("biscuits", Serving("ginger-biscuits").UnitPluralIn(HouseholdUnits.Metric));
        Assert.Contains(Serving("white-rice").Measures, m => m is { Name: "cup", Grams: 158 });
        Assert.Contains(Serving("white-rice").Measures, m => m.Name == "mug");

        string NameOf(string id, HouseholdUnits units) =>
            FoodLibrary.Standard.Find(id)!.NameIn(units);
        Serving Serving(string id) => FoodLibrary.Standard.Find(id)!.Serving;
    }

    [Theory]
    [InlineData("courgette")]
    [InlineData("aubergine")]
    [InlineData("tinned")]
    [InlineData("yoghurt")]
    [InlineData("soya")]
    [InlineData("prawn")]
    [InlineData("maize")]
    [InlineData("biscuits")]
    [InlineData("porridge oats")]
    [InlineData("flavour")]
    public void No_American_name_holds_a_British_word(string word) =>
        Assert.DoesNotContain(
            All.Where(food => food.Id != "shredded-wheat"),
            food =>
                food.NameIn(HouseholdUnits.UsCustomary)
                    .Contains(word, StringComparison.OrdinalIgnoreCase)
        );

    [Fact]
    public void Every_poured_or_cooked_food_has_an_American_measure() =>
        Assert.All(
            Of(ServingStyle.Poured),
            food =>
                Assert.Contains(food.Serving.Measures, m => m.Units == HouseholdUnits.UsCustomary)
        );
}
