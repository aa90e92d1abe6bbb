using NodaTime;
using Practice.Domain.Screening;
using Practice.Domain.Targets;

namespace Practice.Domain.Tests.Targets;

public class TargetOverrideTests
{
    private static readonly Instant Morning = Instant.FromUtc(2026, 9, 1, 8, 0);

    [Fact]
    public void An_own_rate_replaces_the_aim_and_everything_computed_from_it()
    {
        var targets = With(Own(TargetKeys.CarbohydrateRate, 9));
        Assert.Equal(630m, targets.CarbohydratePerDay.Aim);
        Assert.Equal(945m, targets.CarbohydrateTotal.Aim);
    }

    [Fact]
    public void An_own_value_is_kept_beside_what_was_computed()
    {
        var own = With(Own(TargetKeys.CarbohydratePerDay, 650)).CarbohydratePerDay.Override;
        Assert.Equal((650m, 700m), (own!.Value, own.Computed));
        Assert.Equal("Could not finish 700 g in rehearsal", own.Reason);
    }

    [Fact]
    public void The_band_goes_with_an_own_aim()
    {
        var day = With(Own(TargetKeys.CarbohydratePerDay, 600)).CarbohydratePerDay;
        Assert.Equal((540m, 660m), (day.Low, day.High));
    }

    [Fact]
    public void Where_there_is_no_aim_an_own_value_replaces_the_ceiling()
    {
        var targets = With(Own(TargetKeys.Fibre, 10), Own(TargetKeys.Fat, 15));
        Assert.Equal(10m, targets.Fibre.High);
        Assert.Equal((15m, 15m), (targets.Fat.Low, targets.Fat.High));
    }

    [Fact]
    public void The_latest_of_two_own_values_holds()
    {
        var first = Own(TargetKeys.CarbohydrateRate, 9);
        var second = first with { Value = 11, At = Morning + Duration.FromHours(1) };
        Assert.Equal(11m, With(second, first).CarbohydrateRate.Aim);
    }

    [Fact]
    public void An_own_rate_may_go_past_screening_but_says_so()
    {
        var targets = (
            Athlete.MiddlingMan with
            {
                Adjustments = new Adjustments { CarbohydrateRateLow = 5, CarbohydrateRateHigh = 7 },
                Choices = new() { Overrides = [Own(TargetKeys.CarbohydrateRate, 8)] },
            }
        ).Targets();
        Assert.Equal(8m, targets.CarbohydrateRate.Aim);
        Assert.Contains(
            "above the range",
            targets.CarbohydrateRate.Basis.Note,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void An_own_finish_time_decides_whether_to_load() =>
        Assert.False(With(Own(TargetKeys.ExpectedFinish, 80)).Loads);

    private static LoadingTargets With(params TargetOverride[] own) =>
        (Athlete.MiddlingMan with { Choices = new() { Overrides = [.. own] } }).Targets();

    private static TargetOverride Own(string key, decimal value) =>
        new(key, value, null, "Practitioner", Morning, "Could not finish 700 g in rehearsal");
}
