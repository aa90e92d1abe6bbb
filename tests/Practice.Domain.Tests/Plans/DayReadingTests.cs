using NodaTime;
using Practice.Domain.Plans;
using Practice.Domain.Quantities;
using Practice.Domain.Screening;
using Practice.Domain.Targets;

namespace Practice.Domain.Tests.Plans;

public class DayReadingTests
{
    [Fact]
    public void A_part_day_is_held_against_its_part()
    {
        var targets = SampleTargets.At(700);
        var days = LoadingLayout.Days(
            new LocalDateTime(2027, 4, 18, 9, 0),
            BodyMass.OfKilograms(70),
            new LoadingChoices(),
            targets,
            Adjustments.None
        );

        var evening = DayReading.Of(days[0], targets);

        Assert.Equal(140m, evening[0].Target.Aim!.Value, 3);
        Assert.Equal(0m, evening[0].Value);
        Assert.Contains(evening[0].Target.Basis.Inputs, i => i.Value == "20 %");
        Assert.All(
            evening,
            r => Assert.DoesNotContain("/day", r.Target.Unit, StringComparison.Ordinal)
        );
    }

    [Fact]
    public void A_floor_that_screening_took_away_is_no_floor_at_zero()
    {
        var targets = SampleTargets.At(700);
        var days = LoadingLayout.Days(
            new LocalDateTime(2027, 4, 18, 9, 0),
            BodyMass.OfKilograms(70),
            new LoadingChoices(),
            targets,
            Adjustments.None with
            {
                NoAddedSodium = true,
            }
        );

        Assert.Null(
            DayReading.Of(days[^1], targets).Single(r => r.Target.Key == "sodium").Target.Low
        );
    }
}
