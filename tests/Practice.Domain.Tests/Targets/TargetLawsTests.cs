using CsCheck;
using NodaTime;
using Practice.Domain.Clients;
using Practice.Domain.Screening;
using Practice.Domain.Targets;

namespace Practice.Domain.Tests.Targets;

/// <summary>What holds for every athlete, from 25 to 200 kg.</summary>
public class TargetLawsTests
{
    private static readonly Gen<Athlete> Athletes =
        from mass in Gen.Decimal[25, 200]
        from height in Gen.Decimal[140, 205]
        from sex in Gen.Bool.Select(female => female ? Sex.Female : Sex.Male)
        from fat in Gen.Int[3, 60]
        from measuresFat in Gen.Bool
        from age in Gen.Int[14, 80]
        from half in Gen.Double[65, 200]
        from ran in Gen.Bool
        from weekly in Gen.Int[0, 200]
        from goal in Gen.Int[60, 420]
        from window in Gen.Int[24, 96]
        select new Athlete
        {
            MassKg = mass,
            HeightCm = height,
            Sex = sex,
            BodyFatPercent = measuresFat ? fat : null,
            Age = age,
            Recent = ran ? Athlete.Half(half) : null,
            WeeklyKm = weekly == 0 ? null : weekly,
            Goal = Duration.FromMinutes(goal),
            Choices = new() { WindowHours = window },
        };

    [Fact]
    public void An_aim_computed_without_own_values_lies_in_its_band() =>
        Athletes.Sample(athlete =>
            athlete.Targets().All.All(t => !(t.Aim < t.Low || t.Aim > t.High || t.Low > t.High))
        );

    [Fact]
    public void A_longer_window_never_means_less_carbohydrate() =>
        Gen.Select(Athletes, Gen.Int[24, 96])
            .Sample(
                (athlete, other) =>
                {
                    var shorter = Math.Min(athlete.Choices.WindowHours, other);
                    var longer = Math.Max(athlete.Choices.WindowHours, other);
                    return Total(athlete, shorter) <= Total(athlete, longer);
                }
            );

    [Fact]
    public void The_expected_curve_never_falls_and_stays_inside_its_band() =>
        Athletes.Sample(athlete =>
        {
            var curve = athlete.Targets().Glycogen;
            return curve.All(p => p.Low <= p.Expected && p.Expected <= p.High)
                && curve
                    .Zip(curve.Skip(1))
                    .All(pair => pair.First.Expected <= pair.Second.Expected);
        });

    [Fact]
    public void The_curve_has_a_point_for_each_hour_of_the_window() =>
        Athletes.Sample(athlete =>
        {
            var targets = athlete.Targets();
            return targets.Glycogen.Length == targets.WindowHours + 1
                && targets.Glycogen[^1].Hour == targets.WindowHours;
        });

    [Fact]
    public void Nobody_is_sent_above_the_rate_that_screening_allows() =>
        Gen.Select(Athletes, Gen.Decimal[3, 9], Gen.Decimal[3, 14])
            .Sample((athlete, high, chosen) => (
                        athlete with
                        {
                            Adjustments = new Adjustments { CarbohydrateRateHigh = high },
                            Choices = new() { CarbohydrateGPerKg = chosen },
                        }
                    ).Targets().CarbohydrateRate.Aim <= high);

    private static decimal? Total(Athlete athlete, int hours) =>
        (athlete with { Choices = new() { WindowHours = hours } }).Targets().CarbohydrateTotal.Aim;
}
