using Practice.Domain.Screening;

namespace Practice.Domain.Tests.Screening;

public class NumberFreeTests
{
    [Theory]
    [InlineData("Rice, 200 g")]
    [InlineData("Rice, 200g")]
    [InlineData("Rice, 200\u00A0g")] // non-breaking space
    [InlineData("Rice, 200\u2009g")] // thin space
    [InlineData("Rice, 200\u202Fg")] // narrow non-breaking space
    [InlineData("a 30-g bar")]
    [InlineData("a 30\u2011g bar")] // non-breaking hyphen
    [InlineData("200\ng of rice")] // broken over two lines
    [InlineData("You weigh 62.5 kg")]
    [InlineData("62,5 KG")]
    [InlineData("½ kg of potatoes")]
    [InlineData("10\u201312 g/kg")]
    [InlineData("2 800 kcal")]
    [InlineData("2800 Calories")]
    [InlineData("12 MJ")]
    [InlineData("11700 kJ")]
    [InlineData("500 ml of water")]
    [InlineData("500mL of water")]
    [InlineData("1.5 L")]
    [InlineData("2 litres")]
    [InlineData("1 liter")]
    [InlineData("80 mg of caffeine")]
    [InlineData("85%")]
    [InlineData("85 per cent")]
    [InlineData("30 mmol")]
    [InlineData("50 µg")]
    [InlineData("8 oz")]
    [InlineData("140 lb")]
    [InlineData("Carbohydrate (g)")]
    [InlineData("Rate (g/kg)")]
    [InlineData("٣ kg")] // a digit of another script
    public void A_number_with_a_unit_is_found(string text)
    {
        Assert.False(NumberFree.Allows(text));
    }

    [Theory]
    [InlineData("")]
    [InlineData("2 slices of white toast with jam")]
    [InlineData("1 cup of rice, 6 large eggs, 3 gels, 2 glasses of juice")]
    [InlineData("12:30 Lunch")]
    [InlineData("Saturday 4 October, 09:00, 42.2 km")]
    [InlineData("30 min before the start")]
    [InlineData("Step 2: leave the bread out")]
    [InlineData("vitamin B12 and 3 medium bananas")]
    [InlineData("Page 1 of 4")]
    [InlineData("Wave 2. L and M start first")]
    [InlineData("a pinch of salt and plenty of grams of goodwill")]
    [InlineData("Figs (dried)")]
    public void Measures_of_the_kitchen_times_and_distances_may_stay(string text)
    {
        Assert.Empty(NumberFree.Violations(text));
    }

    [Fact]
    public void Every_number_with_a_unit_is_named()
    {
        Assert.Equal(
            ["120 g", "1,480.5 kcal"],
            NumberFree.Violations("Breakfast: 120 g and 1,480.5 kcal in 2 bowls")
        );
    }
}
