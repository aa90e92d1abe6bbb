using System.Collections.Immutable;
using System.Text.RegularExpressions;
using CsCheck;
using Practice.Domain.Foods;
using Practice.Domain.Plans;
using static Practice.Domain.Foods.HouseholdUnits;
using static Practice.Domain.Foods.ServingStyle;

namespace Practice.Domain.Tests.Plans;

public sealed partial class PortionWordsTests
{
    private static readonly HouseholdMeasure Cup = new("cup", "cups", 158, UsCustomary);
    private static readonly HouseholdMeasure Mug = new("mugful", "mugfuls", 175);
    private static readonly HouseholdMeasure Glass = new("large glass", "large glasses", 300);

    private static Portion Of(
        ServingStyle style,
        int steps,
        decimal stepGrams,
        decimal unitsPerStep,
        string unit,
        string plural,
        params ImmutableArray<HouseholdMeasure> measures
    ) =>
        new()
        {
            FoodId = "food",
            Name = "Food",
            Role = MealRole.Rice,
            Group = FoodGroup.Starch,
            Steps = steps,
            Per100G = Nutrients.Zero,
            Serving = new()
            {
                Style = style,
                StepGrams = stepGrams,
                UnitsPerStep = unitsPerStep,
                Unit = unit,
                UnitPlural = plural,
                Steps = [2, 4, 6, 8, 10],
                Measures = measures,
            },
        };

    private static Portion Bagels(int halves) => Of(Counted, halves, 45, 0.5m, "bagel", "bagels");

    private static Portion Rice(int steps) => Of(Weighed, steps, 50, 50, "g", "g", Cup, Mug);

    private static Portion Juice(int steps) => Of(Poured, steps, 52, 50, "ml", "ml", Glass);

    [Fact]
    public void A_piece_is_called_what_the_reader_calls_it()
    {
        var biscuits = Of(Counted, 4, 8, 1, "biscuit", "biscuits");
        biscuits = biscuits with
        {
            Serving = biscuits.Serving with { UsUnit = "cookie", UsUnitPlural = "cookies" },
        };
        Assert.Equal("4 biscuits (32 g)", Plain(PortionWords.Full(biscuits, Metric)));
        Assert.Equal("4 cookies (32 g)", Plain(PortionWords.Full(biscuits, UsCustomary)));
        Assert.Equal("four cookies", PortionWords.NumberFree(biscuits, UsCustomary));
    }

    [Theory]
    [InlineData(1, "½ bagel (45 g)", "half a bagel")]
    [InlineData(2, "1 bagel (90 g)", "a bagel")]
    [InlineData(3, "1½ bagels (135 g)", "one and a half bagels")]
    [InlineData(5, "2½ bagels (225 g)", "two and a half bagels")]
    [InlineData(44, "22 bagels (1980 g)", "twenty-two bagels")]
    public void Counted_food_is_said_in_pieces_and_grams(int halves, string full, string words)
    {
        Assert.Equal(full, Plain(PortionWords.Full(Bagels(halves), Metric)));
        Assert.Equal(full, Plain(PortionWords.Full(Bagels(halves), UsCustomary)));
        Assert.Equal(words, PortionWords.NumberFree(Bagels(halves), Metric));
    }

    [Fact]
    public void Quarters_are_said_as_quarters()
    {
        var naan = Of(Counted, 3, 32, 0.25m, "naan", "naans");
        Assert.Equal("¾ naan", Plain(PortionWords.Household(naan, Metric)));
        Assert.Equal("three quarters of a naan", PortionWords.NumberFree(naan, Metric));
    }

    [Fact]
    public void Weighed_food_is_said_by_the_scales_first_and_in_us_words_by_the_cup()
    {
        Assert.Equal("350 g, about 2 mugfuls", Plain(PortionWords.Full(Rice(7), Metric)));
        Assert.Equal("about 2¼ cups (350 g)", Plain(PortionWords.Full(UsRice(7), UsCustomary)));
        Assert.Equal("about two mugfuls", PortionWords.NumberFree(Rice(7), Metric));
        Assert.Equal("about 2 mugfuls", Plain(PortionWords.Household(Rice(7), Metric)));
        Assert.Equal("350 g", Plain(PortionWords.Grams(Rice(7))));

        static Portion UsRice(int steps) =>
            Of(Weighed, steps, 50, 50, "g", "g", Cup with { Grams = 150 });
    }

    [Fact]
    public void A_measure_that_fits_exactly_needs_no_about_in_us_words() =>
        Assert.Equal(
            "2 cups (350 g)",
            Plain(
                PortionWords.Full(
                    Of(Weighed, 7, 50, 50, "g", "g", Cup with { Grams = 175 }),
                    UsCustomary
                )
            )
        );

    [Fact]
    public void A_cup_is_not_offered_to_a_kitchen_without_cups() =>
        Assert.Equal(
            "160 g",
            Plain(PortionWords.Full(Of(Weighed, 1, 160, 160, "g", "g", Cup), Metric))
        );

    [Fact]
    public void Drinks_are_said_by_the_jug_and_in_us_words_by_the_fluid_ounce()
    {
        Assert.Equal("300 ml, about a large glass", Plain(PortionWords.Full(Juice(6), Metric)));
        Assert.Equal("10 fl oz (300 ml)", Plain(PortionWords.Full(Juice(6), UsCustomary)));
        Assert.Equal("about a large glass", PortionWords.NumberFree(Juice(6), Metric));
        Assert.Equal("about half a large glass", PortionWords.NumberFree(Juice(3), Metric));
    }

    [Fact]
    public void A_unit_with_a_number_of_its_own_neither_runs_into_the_count_nor_reaches_number_free_paper()
    {
        var pots = Of(Counted, 2, 125, 1, "125 g pot", "125 g pots");
        Assert.Equal("2 × 125 g pots (250 g)", Plain(PortionWords.Full(pots, Metric)));
        Assert.Equal("two pots", PortionWords.NumberFree(pots, Metric));
    }

    [Fact]
    public void Abbreviations_are_spelt_out_in_words() =>
        Assert.Equal(
            "two tablespoons",
            PortionWords.NumberFree(Of(Counted, 2, 20, 1, "tbsp", "tbsp"), Metric)
        );

    [Fact]
    public void Without_a_measure_number_free_paper_still_says_how_much()
    {
        var gnocchi = Of(Weighed, 10, 50, 50, "g", "g");
        Assert.Equal("a large helping", PortionWords.NumberFree(gnocchi, Metric));
        var squash = Of(Poured, 10, 50, 50, "ml", "ml");
        Assert.Equal("about two glasses", PortionWords.NumberFree(squash, Metric));
    }

    [Fact]
    public void No_number_parts_from_its_unit_at_the_end_of_a_line() =>
        Assert.DoesNotMatch(@"\d [a-z]", PortionWords.Full(Rice(7), Metric));

    [Fact]
    public void Words_never_hold_a_digit_and_measures_never_stray_from_the_amount() =>
        Gen.Select(Gen.Int[1, 40], Gen.Int[5, 120], Gen.Int[20, 400], Gen.Enum<ServingStyle>())
            .Sample(
                (steps, stepGrams, measureGrams, style) =>
                {
                    var portion = Of(
                        style,
                        steps,
                        stepGrams,
                        style == Counted ? 0.5m : stepGrams,
                        style == Counted ? "piece"
                            : style == Poured ? "ml"
                            : "g",
                        style == Counted ? "pieces"
                            : style == Poured ? "ml"
                            : "g",
                        new HouseholdMeasure("bowl", "bowls", measureGrams)
                    );
                    Assert.DoesNotMatch(AnyDigit(), PortionWords.NumberFree(portion, Metric));
                    if (KitchenMeasure.Of(portion, Metric) is { } said)
                        Assert.InRange(
                            said.Count * measureGrams / portion.Grams,
                            1 - 0.13m,
                            1 + 0.13m
                        );
                }
            );

    private static string Plain(string text) => text.Replace('\u00A0', ' ');

    [GeneratedRegex(@"[\d¼½¾⅓⅔]")]
    private static partial Regex AnyDigit();
}
