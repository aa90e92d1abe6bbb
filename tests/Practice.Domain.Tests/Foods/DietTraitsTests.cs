using Practice.Domain.Foods;

namespace Practice.Domain.Tests.Foods;

/// <summary>Allergens and traits agree with each other and with what a food plainly is.</summary>
public sealed class DietTraitsTests
{
    private static IEnumerable<Food> All => FoodLibrary.Standard.All;

    private static IEnumerable<Food> Named(params string[] words) =>
        All.Where(food =>
            words.Any(word => food.Name.Contains(word, StringComparison.OrdinalIgnoreCase))
        );

    private static void AllHave(
        IEnumerable<Food> foods,
        Allergen allergen,
        params string[] except
    ) =>
        Assert.All(
            foods.Where(food => !except.Contains(food.Id)),
            food => Assert.True(food.Allergens.Contains(allergen), $"{food.Id} without {allergen}")
        );

    private static void NoneHas(IEnumerable<Food> foods, params Allergen[] allergens) =>
        Assert.All(foods, food => Assert.True(!food.Allergens.Intersect(allergens).Any(), food.Id));

    [Fact]
    public void Nothing_vegan_holds_an_animal_allergen() =>
        NoneHas(
            All.Where(food => food.IsVegan),
            Allergen.Milk,
            Allergen.Eggs,
            Allergen.Fish,
            Allergen.Crustaceans,
            Allergen.Molluscs
        );

    [Fact]
    public void Fish_and_shellfish_are_seafood_and_the_other_way_round() =>
        Assert.All(
            All,
            food =>
                Assert.True(
                    food.Is(FoodTraits.Seafood)
                        == food.Allergens.Any(a =>
                            a is Allergen.Fish or Allergen.Crustaceans or Allergen.Molluscs
                        ),
                    food.Id
                )
        );

    [Fact]
    public void Pork_and_beef_are_meat_and_meat_is_not_vegetarian()
    {
        Assert.All(
            All.Where(f => f.Is(FoodTraits.Pork) || f.Is(FoodTraits.Beef)),
            food => Assert.True(food.Is(FoodTraits.Meat), food.Id)
        );
        Assert.All(
            Named("chicken", "turkey", "beef", "ham", "gelatine", "marshmallow"),
            food =>
                Assert.True(
                    !food.IsVegetarian || food.Id is "graham" or "marshmallow-spread",
                    food.Id
                )
        );
    }

    [Fact]
    public void Gelatine_may_be_of_pigs() =>
        Assert.All(
            Named("gelatine", "marshmallows", "gummy"),
            food => Assert.True(food.Is(FoodTraits.Pork), food.Id)
        );

    [Fact]
    public void Honey_is_an_animal_product()
    {
        Assert.NotEmpty(Named("honey"));
        Assert.All(
            Named("honey").Where(food => food.Id != "honeydew"),
            food => Assert.True(food.Is(FoodTraits.AnimalProduct), food.Id)
        );
    }

    [Fact]
    public void Wheat_foods_say_wheat() =>
        AllHave(
            Named(
                    "wheat",
                    "wholemeal",
                    "bread",
                    "roll",
                    "bagel",
                    "baguette",
                    "pitta",
                    "naan",
                    "roti",
                    "semolina",
                    "couscous",
                    "bulgur",
                    "biscuit",
                    "cake",
                    "pasta",
                    "pretzel",
                    "cracker",
                    "pizza",
                    "udon",
                    "scone",
                    "waffle",
                    "pancake"
                )
                .Where(food =>
                    !food.Name.Contains("gluten-free", StringComparison.OrdinalIgnoreCase)
                ),
            Allergen.Wheat,
            // of maize, rice, rye or potato starch, in spite of the name
            "buckwheat",
            "pancake-syrup",
            "rice-cakes",
            "corn-cakes",
            "popcorn-cakes",
            "rice-crackers",
            "rice-cake-sticks",
            "rye-crispbread",
            "gf-corn-pasta",
            "cornmeal-couscous",
            "rice-flatbread",
            "mochi",
            "idli",
            "fruit-leather"
        );

    [Fact]
    public void What_is_called_gluten_free_is() =>
        Assert.All(
            Named("gluten-free").Where(food => food.Id != "rolled-oats-gf"),
            food => Assert.True(food.IsGlutenFree, food.Id)
        );

    [Fact]
    public void Oats_say_oats_and_whether_they_are_certified()
    {
        AllHave(
            Named("oat")
                .Where(food => food.Id != "buckwheat" && !food.Name.Contains("coat", Ordinal)),
            Allergen.Oats
        );
        Assert.All(
            All.Where(food => food.Id != "rolled-oats-gf"),
            food =>
                Assert.Equal(
                    food.Allergens.Contains(Allergen.Oats),
                    food.Is(FoodTraits.UncertifiedOats)
                )
        );
        Assert.False(FoodLibrary.Standard.Find("rolled-oats-gf")!.Is(FoodTraits.UncertifiedOats));
    }

    [Fact]
    public void Cereals_with_malt_say_barley() =>
        AllHave(
            All.Where(food =>
                food.Id is "corn-flakes" or "crisped-rice" or "malt-loaf" or "malted-milk"
            ),
            Allergen.Barley
        );

    [Fact]
    public void Dairy_says_milk_unless_it_stands_in_for_it() =>
        AllHave(
            All.Where(food => food.Group == FoodGroup.Dairy && !food.IsVegan)
                .Concat(Named("cheese", "yoghurt", "butter", "custard").Where(f => !f.IsVegan)),
            Allergen.Milk,
            "peanut-butter",
            "almond-butter"
        );

    [Fact]
    public void Plant_based_dairy_is_a_substitute() =>
        Assert.All(
            All.Where(food => food.Group == FoodGroup.Dairy && food.IsVegan),
            food => Assert.True(food.Is(FoodTraits.Substitute), food.Id)
        );

    [Fact]
    public void Other_allergens_stand_where_the_name_says_so()
    {
        AllHave(Named("soya", "tofu", "tamari", "teriyaki", "hoisin"), Allergen.Soya);
        AllHave(
            Named("egg", "omelette", "meringue"),
            Allergen.Eggs,
            "vegan-gf-bread",
            "vegan-sponge"
        );
        AllHave(Named("peanut"), Allergen.Peanuts);
        AllHave(Named("almond", "hazelnut"), Allergen.TreeNuts);
        AllHave(Named("sesame", "hummus"), Allergen.Sesame);
        AllHave(Named("prawn"), Allergen.Crustaceans);
        AllHave(Named("oyster"), Allergen.Molluscs);
        AllHave(Named("tuna", "salmon", "haddock", "tilapia", "sardine"), Allergen.Fish);
        AllHave(
            Named("sultana", "dried apricot", "dried mango", "dried apple"),
            Allergen.Sulphites
        );
        AllHave(Named("mayonnaise"), Allergen.Mustard);
    }

    [Fact]
    public void Wholegrain_bran_and_legumes_are_high_in_residue() =>
        Assert.All(
            Named(
                "wholemeal",
                "whole-wheat",
                "bran",
                "brown rice",
                "chickpea",
                "beans, boiled",
                "rye"
            ),
            food => Assert.True(food.Is(FoodTraits.HighResidue), food.Id)
        );

    [Fact]
    public void No_food_holds_alcohol_or_raw_fish()
    {
        Assert.DoesNotContain(All, food => food.Is(FoodTraits.Alcohol));
        Assert.DoesNotContain(
            All,
            food => food.Is(FoodTraits.RawAnimal) && food.Is(FoodTraits.Seafood)
        );
    }

    [Fact]
    public void What_is_sold_as_lactose_free_is()
    {
        Assert.NotEmpty(Named("lactose-free"));
        Assert.All(Named("lactose-free"), food => Assert.True(food.IsLactoseFree, food.Id));
    }

    [Fact]
    public void Milk_with_unknown_lactose_is_not_lactose_free() =>
        Assert.False(FoodLibrary.Standard.Find("yoghurt-fruit")!.IsLactoseFree);

    private const StringComparison Ordinal = StringComparison.Ordinal;
}
