using NodaTime;
using Practice.Domain.Clients;
using Practice.Domain.Physiology;

namespace Practice.Domain.Tests.Physiology;

public class RaceTimePredictionTests
{
    private const decimal MarathonKm = 42.195m;
    private static readonly RaceResult Half = new(21.0975m, Duration.FromMinutes(90));

    // R03: half marathon in 1:30:00 and 30 miles a week, 12248.5 s. Vickers and Vertosick 2016.
    [Fact]
    public void A_marathon_is_predicted_by_Vickers_Vertosick_when_weekly_distance_is_known()
    {
        var prediction = RaceTimePrediction.From(Half, MarathonKm, 30 * 1.609344m);
        Assert.Equal(12248.5, prediction.Time.TotalSeconds, 1.0);
        Assert.Null(prediction.Warning);
    }

    // R01: 11258.6 s; the warning is the abstract's finding of Vickers and Vertosick 2016.
    [Fact]
    public void Without_weekly_distance_Riegel_predicts_a_marathon_and_warns()
    {
        var prediction = RaceTimePrediction.From(Half, MarathonKm, weeklyKm: null);
        Assert.Equal(11258.6, prediction.Time.TotalSeconds, 0.5);
        Assert.Contains("at least 10 min slower", prediction.Warning, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(10)]
    [InlineData(50)]
    public void Other_distances_are_predicted_by_Riegel_without_a_warning(int km)
    {
        var prediction = RaceTimePrediction.From(Half, km, weeklyKm: 60);
        Assert.Equal("Riegel", prediction.Model);
        Assert.Null(prediction.Warning);
    }

    [Fact]
    public void A_marathon_predicts_the_next_marathon_as_fast_as_the_last()
    {
        var last = new RaceResult(MarathonKm, Duration.FromMinutes(230));
        Assert.Equal(last.Time, RaceTimePrediction.From(last, MarathonKm, weeklyKm: 60).Time);
    }
}
