using CsCheck;
using Practice.Domain.Plans;
using Practice.Domain.Tests.Handouts;

namespace Practice.Domain.Tests.Plans;

public sealed class DisplayTotalsTests
{
    [Fact]
    public void Rounded_parts_add_up_and_none_is_a_whole_away_from_the_truth() =>
        Gen.Int[0, 20000]
            .Array[1, 40]
            .Sample(hundredths =>
            {
                decimal[] parts = [.. hundredths.Select(h => h / 100m)];
                var whole = Apportion.Whole(parts.Sum());
                var shown = Apportion.ToWhole(parts, whole);
                Assert.Equal(whole, shown.Sum());
                Assert.All(parts.Zip(shown), p => Assert.True(Math.Abs(p.First - p.Second) < 1));
            });

    [Fact]
    public void Sittings_add_up_to_the_day_and_portions_to_their_sitting()
    {
        foreach (var day in (new SamplePlan { WindowHours = 84 }).Plan().Days)
        {
            var shown = DisplayTotals.Of(day);
            Assert.Equal(Apportion.Whole(day.Totals.CarbohydrateG), shown.CarbohydrateG);
            Assert.Equal(shown.CarbohydrateG, shown.Occasions.Sum(o => o.CarbohydrateG));
            Assert.All(shown.Occasions, o => Assert.Equal(o.CarbohydrateG, o.PortionsG.Sum()));
            Assert.All(
                day.Occasions.Zip(shown.Occasions),
                pair =>
                {
                    var (truth, printed) = pair;
                    Assert.True(Math.Abs(truth.Totals.CarbohydrateG - printed.CarbohydrateG) < 1);
                    Assert.All(
                        truth.Portions.Zip(printed.PortionsG),
                        p => Assert.True(Math.Abs(p.First.Nutrients.CarbohydrateG - p.Second) < 1)
                    );
                }
            );
        }
    }
}
