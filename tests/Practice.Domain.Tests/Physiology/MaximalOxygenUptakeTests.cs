using NodaTime;
using Practice.Domain.Clients;
using Practice.Domain.Physiology;

namespace Practice.Domain.Tests.Physiology;

public class MaximalOxygenUptakeTests
{
    private static readonly RaceResult TenKm = new(10, Duration.FromMinutes(40));
    private static readonly Physique Unknown = new() { Sex = Sex.Female, HeightCm = 165 };

    [Fact]
    public void A_laboratory_value_goes_before_a_race()
    {
        var known = MaximalOxygenUptake.Of(Unknown with { Vo2Max = 58, RecentResult = TenKm });
        Assert.Equal((58, Vo2MaxOrigin.Measured), (known.MlPerKgMin, known.Origin));
    }

    // D05: 10 km in 40:00 is a VDOT of 51.944. Daniels and Gilbert 1979.
    [Fact]
    public void A_race_stands_in_for_the_laboratory_and_says_so()
    {
        var known = MaximalOxygenUptake.Of(Unknown with { RecentResult = TenKm });
        Assert.Equal(51.944, known.MlPerKgMin, 0.005);
        Assert.Equal(Vo2MaxOrigin.FromRace, known.Origin);
        Assert.Contains("not a measured value", known.Basis.Note, StringComparison.Ordinal);
    }

    [Fact]
    public void A_race_beyond_240_min_is_used_and_called_rough()
    {
        var slow = new RaceResult(42.195m, Duration.FromMinutes(270));
        var known = MaximalOxygenUptake.Of(Unknown with { RecentResult = slow });
        Assert.Equal(Vo2MaxOrigin.FromRace, known.Origin);
        Assert.Contains("rough", known.Basis.Note, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1, 3)]
    [InlineData(100, 600)]
    public void A_race_too_short_or_too_long_says_nothing_and_the_study_mean_is_assumed(
        int km,
        int minutes
    )
    {
        var result = new RaceResult(km, Duration.FromMinutes(minutes));
        var known = MaximalOxygenUptake.Of(Unknown with { RecentResult = result });
        Assert.Equal((53, Vo2MaxOrigin.Assumed), (known.MlPerKgMin, known.Origin));
    }
}
