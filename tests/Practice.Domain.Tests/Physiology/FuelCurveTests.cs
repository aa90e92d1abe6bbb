using System.Collections.Immutable;
using Practice.Domain.Clients;
using Practice.Domain.Physiology;

namespace Practice.Domain.Tests.Physiology;

public class FuelCurveTests
{
    private const double MarathonKm = 42.195;

    private static readonly ImmutableArray<FuelFeed> SixtyAnHour =
    [
        .. Enumerable.Range(1, 9).Select(n => new FuelFeed(n / 3.0, 20)),
    ];

    private static readonly FuelCase Planned = new()
    {
        MassKg = 70,
        Sex = Sex.Male,
        Vo2Max = 55,
        Loading = new FuelLoading(Hours: 38, GramsPerKgDay: 10),
        BreakfastGPerKg = 3,
        Course = FuelLegs.Running(MarathonKm, hours: 3.25, vo2Max: 55),
        Feeds = SixtyAnHour,
    };

    private static readonly FuelCurve Curve = FuelCurve.Of(Planned);

    [Fact]
    public void The_race_balance_of_the_plain_rule_comes_out_when_nothing_is_derated()
    {
        // check G18: 0.3706 of the store is left with a full liver, the whole leg store and the level cost
        var store = WallModel.Store(0.214, WallModel.LegKcalPerKg(182));
        var used = Planned.Course.Sum(l =>
            l.NetKcalPerKg * CarbohydrateShare.At(l.RelativeIntensity)
        );
        var even = Enumerable.Range(1, 9).Select(n => new FuelFeed(n / 3.0, 20));
        var eaten = 4 * RaceFeeding.BurntG([.. even], 3.25, 3.25) / 70;
        Assert.InRange((store - used + eaten) / store, 0.36, 0.374);
    }

    [Fact]
    public void The_curve_begins_with_the_first_meal_and_ends_at_the_finish()
    {
        Assert.Equal(-38, Curve.Points[0].Hour);
        Assert.Equal((3.25, MarathonKm), (Curve.Points[^1].Hour, Curve.Points[^1].Km));
        Assert.Single(Curve.Points, p => p.Hour == 0);
    }

    [Fact]
    public void The_band_holds_the_expected_line_everywhere() =>
        Assert.All(Curve.Points, p => Assert.InRange(p.ExpectedG, p.LowG, p.HighG));

    [Fact]
    public void The_same_case_gives_the_same_curve() =>
        Assert.Equal(Curve.Points, FuelCurve.Of(Planned).Points);

    [Fact]
    public void The_store_rises_while_loading_falls_over_night_and_is_filled_by_breakfast()
    {
        double At(double hour) => Curve.Points.Single(p => p.Hour == hour).ExpectedG;
        Assert.True(At(-12) > At(-38));
        Assert.True(At(-3) < At(-12));
        Assert.True(At(-1) > At(-3));
    }

    [Fact]
    public void The_store_never_rises_on_the_course()
    {
        var race = Curve.Points.Where(p => p.Hour >= 0).Select(p => p.ExpectedG).ToList();
        Assert.Equal(race.OrderDescending(), race);
    }

    [Fact]
    public void The_plan_leaves_more_than_going_without()
    {
        var without = FuelCurve.Of(Planned.WithoutCarbohydrate);
        Assert.True(Curve.Reserve > without.Reserve);
        Assert.True(Curve.WallShare < without.WallShare);
        Assert.Null(Curve.WallKm);
        Assert.InRange(without.WallKm!.Value, 20, MarathonKm);
        Assert.Equal(FuelOutlook.Risk, without.Outlook);
    }

    [Theory]
    [InlineData(0.149, FuelOutlook.Risk)]
    [InlineData(0.15, FuelOutlook.Watch)]
    [InlineData(0.249, FuelOutlook.Watch)]
    [InlineData(0.25, FuelOutlook.Enough)]
    public void Flags_stand_at_15_and_25_percent(double reserve, FuelOutlook flag) =>
        Assert.Equal(flag, (Curve with { Reserve = reserve }).Outlook);

    [Fact]
    public void Climbing_costs_more_than_the_level()
    {
        var uphill = Planned with
        {
            Course =
            [
                .. Planned.Course.Select(l => l with { NetKcalPerKg = l.NetKcalPerKg * 1.2 }),
            ],
        };
        Assert.True(FuelCurve.Of(uphill).Reserve < Curve.Reserve);
    }

    [Fact]
    public void What_is_taken_too_late_is_not_burnt() =>
        Assert.Equal(0, RaceFeeding.BurntG([new FuelFeed(3, 50)], 3.2, 3.2));
}
