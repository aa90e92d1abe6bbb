using Practice.Domain.Evidence;
using Practice.Domain.Targets;
using Practice.Web.Parts.Meters;

namespace Practice.Web.Tests.Parts;

public class MeterReadingTests
{
    private static readonly Target Carbohydrate = new()
    {
        Key = "carbohydrate-per-day",
        Name = "Carbohydrate, full day",
        Aim = 640,
        Low = 600,
        High = 680,
        Unit = "g/day",
        Basis = new Basis("rate x body mass", [], []),
    };

    private static readonly Target Fibre = Carbohydrate with { Aim = null, Low = null, High = 15 };

    private static readonly Target Protein = Carbohydrate with
    {
        Aim = null,
        Low = 60,
        High = null,
    };

    [Theory]
    [InlineData(640, Standing.Within, "on target")]
    [InlineData(600, Standing.Within, "on target")]
    [InlineData(599, Standing.Below, "1 g short")]
    [InlineData(560, Standing.Below, "40 g short")]
    [InlineData(700, Standing.Above, "20 g over")]
    [InlineData(680.4, Standing.Above, "1 g over")] // never "0 g over"
    public void A_value_is_held_against_the_band(decimal value, Standing standing, string words)
    {
        var reading = MeterReading.Of(Carbohydrate, value);
        Assert.Equal((standing, words), (reading.Standing, reading.StandingText));
    }

    [Fact]
    public void A_ceiling_has_no_aim_and_no_floor()
    {
        var reading = MeterReading.Of(Fibre, 4);
        Assert.Null(reading.AimAt);
        Assert.Equal(0, reading.LowAt);
        Assert.Equal("at most 15 g/day", reading.AskedText);
        Assert.Equal("within limits", reading.StandingText);
        Assert.Equal(Standing.Above, MeterReading.Of(Fibre, 16).Standing);
    }

    [Fact]
    public void A_floor_allows_all_above_it()
    {
        var reading = MeterReading.Of(Protein, 300);
        Assert.Equal((Standing.Within, 100d), (reading.Standing, reading.HighAt));
        Assert.Equal(Standing.Below, MeterReading.Of(Protein, 59).Standing);
    }

    [Fact]
    public void Without_a_value_it_says_so() =>
        Assert.Equal(
            ("–", "nothing planned yet"),
            (
                MeterReading.Of(Carbohydrate, null).ValueText,
                MeterReading.Of(Carbohydrate, null).StandingText
            )
        );

    [Theory]
    [InlineData(0)]
    [InlineData(640)]
    [InlineData(5000)]
    public void Everything_lies_on_the_bar_in_the_order_of_its_size(decimal value)
    {
        var reading = MeterReading.Of(Carbohydrate, value);
        double[] places = [reading.LowAt, reading.AimAt!.Value, reading.HighAt];
        Assert.Equal(places.Order(), places);
        Assert.All([.. places, reading.ValueAt!.Value], p => Assert.InRange(p, 0, 100));
        Assert.Equal(value < 640, reading.ValueAt < reading.AimAt);
    }
}
