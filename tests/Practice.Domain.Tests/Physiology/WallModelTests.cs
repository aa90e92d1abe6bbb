using Practice.Domain.Physiology;

namespace Practice.Domain.Tests.Physiology;

/// <summary>What Rapoport 2010 states of the wall, as far as it could be read.</summary>
public class WallModelTests
{
    private const double MarathonKm = 42.195;
    private const double Mile21Km = 33.8;
    private const double Mile11Km = 17.7;

    private static readonly double Usual = WallModel.Store(legShare: 0.214, legKcalPerKg: 80);

    [Fact]
    public void Nobody_below_55_percent_hits_the_wall_in_a_marathon() =>
        Assert.True(WallModel.WallKm(Usual, 0.55) > MarathonKm);

    [Fact]
    public void Few_fail_before_mile_11() =>
        Assert.True(WallModel.WallKm(WallModel.Store(0.15, 60), 0.95) > Mile11Km);

    [Fact]
    public void Failures_at_80_to_95_percent_lie_around_mile_21() =>
        Assert.InRange(Mile21Km, WallModel.WallKm(Usual, 0.95), WallModel.WallKm(Usual, 0.80));

    [Fact]
    public void The_fullest_legs_no_longer_limit_a_marathon() =>
        Assert.InRange(
            WallModel.FastestUnfedIntensity(WallModel.Store(0.214, 144), MarathonKm),
            0.98,
            1
        );

    [Fact]
    public void The_wall_comes_earlier_the_faster_one_runs()
    {
        double[] intensities = [0.5, 0.6, 0.7, 0.8, 0.9, 1];
        var walls = intensities.Select(x => WallModel.WallKm(Usual, x)).ToList();
        Assert.Equal(walls.OrderDescending(), walls);
        Assert.Equal(walls.Count, walls.Distinct().Count());
    }
}
