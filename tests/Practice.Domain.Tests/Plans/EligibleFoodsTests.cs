using Practice.Domain.Clients;
using Practice.Domain.Foods;
using Practice.Domain.Plans;
using Practice.Domain.Screening;

namespace Practice.Domain.Tests.Plans;

public class EligibleFoodsTests
{
    [Fact]
    public void An_allergen_is_excluded_for_safety_so_that_no_hand_adds_it()
    {
        var diet = Diet.Unrestricted with { Allergies = [Allergen.Milk] };
        var foods = Sort(SampleFood.With(Allergen.Milk), diet);

        Assert.Empty(foods.Allowed);
        Assert.Empty(foods.AddableByHand);
        Assert.True(Assert.Single(foods.Excluded).IsSafety);
    }

    [Fact]
    public void What_screening_excludes_is_excluded_for_safety()
    {
        var coeliac = Adjustments.None with
        {
            ExcludedAllergens = [Allergen.Wheat, Allergen.Rye, Allergen.Barley],
        };
        Assert.Empty(Sort(SampleFood.Toast, adjustments: coeliac).AddableByHand);
    }

    [Fact]
    public void Why_screening_excludes_a_food_is_said_in_words()
    {
        var foods = Sort(
            SampleFood.Toast with
            {
                Traits = FoodTraits.HighFodmap | FoodTraits.Pork,
            },
            adjustments: Adjustments.None with
            {
                ExcludedTraits = FoodTraits.HighFodmap | FoodTraits.Pork,
            }
        );

        Assert.Equal(
            "excluded by screening: pork, rich in fermentable sugars",
            Assert.Single(foods.Excluded).Reason
        );
    }

    [Fact]
    public void A_dislike_stays_out_of_plans_but_a_hand_may_add_it()
    {
        var tastes = Tastes.Unknown with { Dislikes = ["toast"] };
        var foods = Sort(SampleFood.Toast, tastes: tastes);

        Assert.Empty(foods.Allowed);
        Assert.Single(foods.AddableByHand);
    }

    [Theory]
    [InlineData(DietPattern.Vegan, FoodTraits.AnimalProduct, false)]
    [InlineData(DietPattern.Vegetarian, FoodTraits.AnimalProduct, true)]
    [InlineData(DietPattern.Vegetarian, FoodTraits.Seafood, false)]
    [InlineData(DietPattern.Pescatarian, FoodTraits.Seafood, true)]
    [InlineData(DietPattern.Pescatarian, FoodTraits.Meat, false)]
    [InlineData(DietPattern.Omnivore, FoodTraits.Meat, true)]
    public void Diet_patterns_let_in_what_they_eat(
        DietPattern pattern,
        FoodTraits traits,
        bool allowed
    )
    {
        var foods = Sort(
            SampleFood.Toast with
            {
                Traits = traits,
            },
            Diet.Unrestricted with
            {
                Pattern = pattern,
            }
        );
        Assert.Equal(allowed, foods.Allowed.Length == 1);
    }

    [Theory]
    [InlineData(Allergen.Milk)]
    [InlineData(Allergen.Eggs)]
    public void Vegans_get_neither_milk_nor_eggs(Allergen allergen) =>
        Assert.Empty(
            Sort(
                SampleFood.With(allergen),
                Diet.Unrestricted with
                {
                    Pattern = DietPattern.Vegan,
                }
            ).Allowed
        );

    [Fact]
    public void Residue_is_left_out_unless_it_was_tolerated_or_must_not_be_restricted()
    {
        var bran = SampleFood.Toast with { Traits = FoodTraits.HighResidue };

        Assert.Empty(Sort(bran).Allowed);
        Assert.Single(Sort(bran, tastes: Tastes.Unknown with { Tolerated = ["toast"] }).Allowed);
        Assert.Single(
            Sort(bran, adjustments: Adjustments.None with { NoLowResidue = true }).Allowed
        );
    }

    [Fact]
    public void Milk_of_unknown_lactose_is_kept_from_those_who_may_have_none()
    {
        var none = Adjustments.None with { LactoseMaxPerOccasionG = 0 };
        var milk = SampleFood.With(Allergen.Milk);
        var lactoseFree = milk with { Per100G = milk.Per100G with { LactoseG = 0 } };

        Assert.Empty(Sort(milk, adjustments: none).Allowed);
        Assert.Single(Sort(lactoseFree, adjustments: none).Allowed);
    }

    [Fact]
    public void Hereditary_fructose_intolerance_leaves_nothing_with_fructose_or_sucrose()
    {
        var none = Adjustments.None with { NoFructoseAtAll = true };
        var sugarless = SampleFood.Toast with
        {
            Per100G = SampleFood.Toast.Per100G with { SugarsG = 0 },
        };

        var rice = SampleFood.Toast with
        {
            Per100G = SampleFood.Toast.Per100G with { SugarsG = 0.05m },
        };

        Assert.Single(Sort(rice, adjustments: none).Allowed);
        Assert.Empty(Sort(SampleFood.Toast, adjustments: none).AddableByHand);
        Assert.Single(Sort(sugarless, adjustments: none).Allowed);
    }

    [Fact]
    public void A_client_without_a_cooker_is_served_nothing_that_needs_one()
    {
        var rice = SampleFood.Toast with { Roles = [new FoodRole(MealRole.Rice, 50)] };
        Assert.Empty(
            Sort(rice, Diet.Unrestricted with { Kitchen = [KitchenLimit.NoCooker] }).Allowed
        );
        Assert.Single(Sort(rice).Allowed);
    }

    [Fact]
    public void Who_must_have_no_sucrose_is_served_none_and_none_that_may_be_hidden_in_sugars()
    {
        var deficiency = Adjustments.None with { NoSucroseAtAll = true };
        Assert.Empty(
            Sort(Of(new() { SugarsG = 5, SucroseG = 5 }), adjustments: deficiency).AddableByHand
        );
        Assert.Empty(Sort(Of(new() { SugarsG = 5 }), adjustments: deficiency).AddableByHand);
        Assert.Single(
            Sort(Of(new() { SugarsG = 5, LactoseG = 5 }), adjustments: deficiency).Allowed
        );
    }

    [Fact]
    public void Who_must_have_no_caffeine_is_served_none()
    {
        var cola = Of(new() { CaffeineMg = 8 });
        Assert.Empty(
            Sort(cola, adjustments: Adjustments.None with { CaffeineMaxMgPerDay = 0 }).AddableByHand
        );
        Assert.Single(
            Sort(cola, adjustments: Adjustments.None with { CaffeineMaxMgPerDay = 200 }).Allowed
        );
    }

    [Fact]
    public void Of_retired_foods_only_what_the_client_must_not_have_is_told()
    {
        var milky = SampleFood.With(Allergen.Milk);
        var retired = new FoodLibrary([], [milky]);
        var allergic = Diet.Unrestricted with { Allergies = [Allergen.Milk] };

        Assert.True(Assert.Single(Sort(retired, allergic).Excluded).IsSafety);
        Assert.Empty(Sort(retired, Diet.Unrestricted).Excluded);
        Assert.Empty(Sort(retired, Diet.Unrestricted).Allowed);
    }

    private static Food Of(Nutrients nutrients) => SampleFood.Toast with { Per100G = nutrients };

    private static EligibleFoods Sort(FoodLibrary library, Diet diet) =>
        EligibleFoods.For(library, diet, Tastes.Unknown, Adjustments.None);

    private static EligibleFoods Sort(
        Food food,
        Diet? diet = null,
        Tastes? tastes = null,
        Adjustments? adjustments = null
    ) =>
        EligibleFoods.For(
            new FoodLibrary([food]),
            diet ?? Diet.Unrestricted,
            tastes ?? Tastes.Unknown,
            adjustments ?? Adjustments.None
        );
}
