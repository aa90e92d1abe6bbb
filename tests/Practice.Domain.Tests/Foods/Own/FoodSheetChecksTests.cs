using Practice.Domain.Foods;
using Practice.Domain.Foods.Own;

namespace Practice.Domain.Tests.Foods.Own;

/// <summary>What is wrong with a food is told at its field before anybody is served it; what is only odd may stay.</summary>
public sealed class FoodSheetChecksTests
{
    private static readonly FoodSheet Bar = SampleSheet.Bar;

    public static TheoryData<string, FoodSheet> Right =>
        new()
        {
            { "bar", Bar },
            { "rice", SampleSheet.Rice },
            { "drink", SampleSheet.Drink },
        };

    [Theory]
    [MemberData(nameof(Right))]
    public void A_food_without_fault_is_left_alone(string name, FoodSheet sheet) =>
        Assert.True(FoodSheetChecks.Of(sheet).IsEmpty, name);

    public static TheoryData<FoodField, string, FoodSheet> Wrong =>
        new()
        {
            { FoodField.Name, "This is needed", Bar with { Name = "  –  " } },
            { FoodField.Name, "At most 100 characters", Bar with { Name = new('x', 101) } },
            { FoodField.Group, "Choose the section", Bar with { Group = null } },
            { FoodField.Family, "no such kind", Bar with { Family = "figs" } },
            {
                FoodField.Family,
                "what it stands in for",
                Bar with
                {
                    Family = null,
                    Traits = FoodTraits.Substitute,
                }
            },
            { FoodField.Roles, "Choose a part", Bar with { Roles = [] } },
            { FoodField.Occasions, "Choose a sitting", Bar with { Occasions = [] } },
            // figures
            { FoodField.Energy, "This is needed", Figures(f => f with { EnergyKcal = null }) },
            { FoodField.Energy, "Between 0 and 900", Figures(f => f with { EnergyKcal = 901 }) },
            { FoodField.Fibre, "ceiling of fibre", Figures(f => f with { FibreG = null }) },
            { FoodField.Sodium, "salt in g times 400", Figures(f => f with { SodiumMg = null }) },
            { FoodField.Caffeine, "Type 0", Figures(f => f with { CaffeineMg = null }) },
            { FoodField.Protein, "Between 0 and 100 g", Figures(f => f with { ProteinG = -1 }) },
            { FoodField.Sugars, "part of the carbohydrate", Figures(f => f with { SugarsG = 73 }) },
            {
                FoodField.Sugars,
                "add up to 41.0 g",
                Figures(f => f with { GlucoseG = 20, FructoseG = 21 })
            },
            {
                FoodField.Carbohydrate,
                "weigh 103.0 g of 100 g",
                Figures(f => f with { FatG = 22 })
            },
            { FoodField.Water, "weigh 105.0 g of 100 g", Figures(f => f with { WaterG = 20 }) },
            // allergens and diets
            { FoodField.Allergens, "none of them", Bar with { Allergens = null } },
            {
                FoodField.Traits,
                "holds fish or shellfish",
                Bar with
                {
                    Allergens = [Allergen.Crustaceans],
                }
            },
            { FoodField.Allergens, "say which", Bar with { Traits = FoodTraits.Seafood } },
            { FoodField.Traits, "Pork and beef are meat", Bar with { Traits = FoodTraits.Pork } },
            {
                FoodField.Allergens,
                "oats are not among",
                Bar with
                {
                    Traits = FoodTraits.UncertifiedOats,
                }
            },
            {
                FoodField.Traits,
                "not certified",
                Bar with
                {
                    Allergens = [Allergen.Wheat, Allergen.Oats],
                }
            },
            { FoodField.Allergens, "comes of milk only", Figures(f => f with { LactoseG = 1 }) },
            {
                FoodField.Allergens,
                "called gluten-free, yet",
                Bar with
                {
                    Name = "Fig bar, gluten-free",
                }
            },
            {
                FoodField.Allergens,
                "called vegan, yet",
                Bar with
                {
                    Name = "Vegan fig bar",
                    Traits = FoodTraits.AnimalProduct,
                }
            },
            {
                FoodField.Allergens,
                "called vegetarian, yet",
                Bar with
                {
                    Name = "Vegetarian fig bar",
                    Traits = FoodTraits.Meat,
                }
            },
            {
                FoodField.Allergens,
                "called lactose-free",
                Bar with
                {
                    Name = "Lactose-free fig bar",
                    Allergens = [Allergen.Wheat, Allergen.Milk],
                }
            },
            {
                FoodField.Allergens,
                "says free of peanut",
                Bar with
                {
                    Name = "Fig bar (peanut free)",
                    Allergens = [Allergen.Peanuts],
                }
            },
            // helpings
            { FoodField.Style, "Choose how", Serving(s => s with { Style = null }) },
            { FoodField.Unit, "needs a word", Serving(s => s with { Unit = " " }) },
            { FoodField.UnitPlural, "In grams", Serving(s => s with { UnitPlural = "g" }) },
            { FoodField.UsUnitPlural, "in pairs", Serving(s => s with { UsUnit = "cookie" }) },
            { FoodField.Grams, "What does one weigh", Serving(s => s with { Grams = null }) },
            { FoodField.Least, "Whole pieces only", Serving(s => s with { Least = 0.5m }) },
            { FoodField.Most, "At least the smallest", Serving(s => s with { Least = 4 }) },
            { FoodField.Most, "At most 12", Serving(s => s with { Most = 13, Grams = 10 }) },
            { FoodField.Most, "That is 630 g", Serving(s => s with { Grams = 210 }) },
            { FoodField.Most, "216 g of carbohydrate", Serving(s => s with { Grams = 100 }) },
            {
                FoodField.Measures,
                "What are several",
                SampleSheet.Rice with
                {
                    Serving = SampleSheet.Rice.Serving with
                    {
                        Measures = [new("blue bowl", "", 220)],
                    },
                }
            },
            {
                FoodField.Style,
                "weighed as cooked, by 50 g",
                SampleSheet.Rice with
                {
                    Serving = SampleSheet.Rice.Serving with { Least = 120 },
                }
            },
            {
                FoodField.Least,
                "by 50 ml",
                SampleSheet.Drink with
                {
                    Serving = SampleSheet.Drink.Serving with { Least = 220 },
                }
            },
            { FoodField.Style, "A drink is poured", Bar with { Roles = [MealRole.Drink] } },
        };

    [Theory]
    [MemberData(nameof(Wrong))]
    public void What_is_wrong_is_told_at_its_field_and_refused(
        FoodField field,
        string words,
        FoodSheet sheet
    )
    {
        var fault = Assert.Single(FoodSheetChecks.Of(sheet), f => !f.IsWarning);
        Assert.Equal(field, fault.Field);
        Assert.Contains(words, fault.Text, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => OwnFood.Of(Guid.NewGuid(), sheet));
    }

    public static TheoryData<FoodField, string, FoodSheet> Odd =>
        new()
        {
            { FoodField.Energy, "it would be 352 kcal", Figures(f => f with { EnergyKcal = 250 }) },
            { FoodField.Water, "Only 85", Figures(f => f with { WaterG = 0 }) },
            { FoodField.Allergens, "says “peanut”", Bar with { Name = "Fig and peanut bar" } },
            {
                FoodField.Name,
                "The library has",
                Bar with
                {
                    Name = FoodLibrary.Standard.Find("fruit-bar")!.Name,
                }
            },
            { FoodField.Source, "where the figures come from", Bar with { Source = "" } },
        };

    [Theory]
    [MemberData(nameof(Odd))]
    public void What_is_odd_is_told_and_may_stay(FoodField field, string words, FoodSheet sheet)
    {
        var fault = Assert.Single(FoodSheetChecks.Of(sheet));
        Assert.Equal((field, true), (fault.Field, fault.IsWarning));
        Assert.Contains(words, fault.Text, StringComparison.Ordinal);
        Assert.Equal(sheet.Name, OwnFood.Of(Guid.NewGuid(), sheet).Food.Name);
    }

    [Theory]
    [InlineData("Gluten-free bread rolls")]
    [InlineData("Vegan cheese and egg-style spread")]
    [InlineData("Dairy-free custard")]
    public void What_is_called_a_stand_in_is_not_asked_for_what_it_stands_in_for(string name) =>
        Assert.Empty(FoodSheetChecks.Of(Bar with { Name = name, Allergens = [Allergen.Soya] }));

    private static FoodSheet Figures(Func<LabelFigures, LabelFigures> change) =>
        Bar with
        {
            Per100G = change(Bar.Per100G),
        };

    private static FoodSheet Serving(Func<ServingSheet, ServingSheet> change) =>
        Bar with
        {
            Serving = change(Bar.Serving),
        };
}
