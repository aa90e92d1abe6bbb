using NodaTime;
using Practice.Domain.Clients;
using Practice.Domain.Physiology;

namespace Practice.Domain.Tests.Physiology;

public class HeatTests
{
    private static readonly LocalDate RaceDay = new(2026, 10, 4);

    private static readonly SweatTest Test = new()
    {
        On = new LocalDate(2026, 9, 6),
        BeforeKg = 70,
        AfterKg = 68.9m,
        DrunkL = 0.5m,
        UrineL = 0.1m,
        Minutes = 60,
        DistanceKm = 13,
        AirC = 16,
        HumidityPercent = 60,
    };

    // checks F20-F25: American College of Sports Medicine, road-race table, secondary copy
    [Theory]
    [InlineData(9.9, HeatColour.White)]
    [InlineData(17.9, HeatColour.Green)]
    [InlineData(18.0, HeatColour.Yellow)]
    [InlineData(22.9, HeatColour.Yellow)]
    [InlineData(23.0, HeatColour.Red)]
    [InlineData(28.0, HeatColour.Red)]
    [InlineData(28.1, HeatColour.Black)]
    public void A_heat_stress_has_a_flag(double wetBulbGlobe, HeatColour flag) =>
        Assert.Equal(flag, HeatColours.Of(wetBulbGlobe));

    [Fact]
    public void A_fresh_test_in_like_weather_is_taken_as_it_is()
    {
        var rate = SweatRate.Of([Test], RaceDay, raceHeatC: 18)!;
        Assert.Equal(1.5m, rate.LPerHour);
        Assert.Empty(rate.Doubts);
    }

    [Fact]
    public void The_latest_test_counts() =>
        Assert.Equal(
            Test,
            SweatRate.Of([Test, Test with { On = Test.On.PlusMonths(-2) }], RaceDay, null)!.Test
        );

    [Fact]
    public void There_is_no_rate_without_a_test() => Assert.Null(SweatRate.Of([], RaceDay, 18));

    [Theory]
    [InlineData(11.9, true)]
    [InlineData(12.6, false)]
    [InlineData(22.1, false)]
    [InlineData(22.5, true)]
    public void More_than_five_degrees_away_from_the_test_asks_for_a_new_one(
        double raceHeat,
        bool stale
    )
    {
        var rate = SweatRate.Of([Test], RaceDay, raceHeat)!;
        Assert.InRange(SweatRate.HeatOf(Test)!.Value, 17.2, 17.5);
        Assert.Equal(stale, rate.Doubts.Contains(SweatDoubt.OtherHeat));
        Assert.True(rate.IsPlausible);
    }

    [Theory]
    [InlineData(69.95, SweatDoubt.TooLow)]
    [InlineData(66.0, SweatDoubt.TooHigh)]
    public void A_weighing_that_cannot_be_right_is_told(decimal after, SweatDoubt doubt)
    {
        var odd = Test with { AfterKg = after, DrunkL = 0, UrineL = 0 };
        var rate = SweatRate.Of([odd], RaceDay, 18)!;
        Assert.Equal([doubt], rate.Doubts);
        Assert.False(rate.IsPlausible);
    }

    [Fact]
    public void A_test_without_weather_and_from_long_ago_says_both() =>
        Assert.Equal(
            [SweatDoubt.HeatUnknown, SweatDoubt.Old],
            SweatRate
                .Of([Test with { AirC = null, On = new LocalDate(2025, 9, 1) }], RaceDay, 18)!
                .Doubts
        );
}
