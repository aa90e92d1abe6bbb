using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Foods;
using Practice.Domain.Plans;
using Practice.Domain.Practices;
using Practice.Domain.Quantities;
using Practice.Domain.Screening;
using Practice.Domain.Targets;

namespace Practice.Domain.Tests.Plans;

public class DaySpreadTests
{
    private static readonly ImmutableArray<decimal> Even =
    [
        0.20m,
        0.15m,
        0.20m,
        0.15m,
        0.20m,
        0.10m,
    ];

    private static ImmutableArray<Sitting> Own(
        ImmutableArray<decimal> shares,
        int minutesLater = 0
    ) =>
        [
            .. DayShape
                .Of(shares.Length)
                .Zip(
                    shares,
                    (s, share) => s with { Share = share, Time = s.Time.PlusMinutes(minutesLater) }
                ),
        ];

    [Fact]
    public void A_day_is_laid_out_as_the_practice_spreads_it()
    {
        var days = Days(new() { Sittings = DaySpread.Checked(Own(Even, 30), 6) }, hours: 60);
        var full = days.Single(d => d.DaysBefore == 2);
        Assert.Equal(
            [140m, 105m, 140m, 105m, 140m, 70m],
            full.Occasions.Select(o => Math.Round(o.CarbohydrateAimG, 3))
        );
        Assert.Equal(new LocalTime(8, 0), full.Occasions[0].Time);
        Assert.Equal(700m, days[^1].Occasions.Sum(o => o.CarbohydrateAimG), 3);
    }

    [Fact]
    public void A_spread_for_other_occasions_than_the_race_has_does_not_count()
    {
        var choices = new LoadingChoices { OccasionsPerDay = 5, Sittings = Own(Even) };
        Assert.Equal(DayShape.Of(5), choices.FullDay);
        Assert.Null(DaySpread.BasisOf(choices.FullDay).Note);
    }

    [Fact]
    public void The_houses_own_spread_is_kept_as_none_and_needs_no_word()
    {
        Assert.Empty(DaySpread.Checked(DayShape.Of(7), 7));
        Assert.Null(DaySpread.BasisOf(new LoadingChoices().FullDay).Note);
        var own = DaySpread.BasisOf(Own(Even));
        Assert.Contains("25 % at 07:30", own.Note, StringComparison.Ordinal);
        Assert.Equal("20 % at 07:30", own.Inputs[0].Value);
    }

    [Theory]
    [InlineData("0.20,0.15,0.20,0.15,0.20,0.05", 0, "The shares make 95 %")]
    [InlineData("0.45,0.10,0.15,0.10,0.15,0.05", 0, "Breakfast: Between 3 % and 40 %")]
    [InlineData("0.25,0.15,0.25,0.18,0.16,0.01", 0, "Supper: Between 3 % and 40 %")]
    [InlineData("0.20,0.15,0.20,0.15,0.20,0.10", 75, "Breakfast: Between 06:30 and 08:30")]
    public void What_no_day_can_be_spread_by_is_refused(string shares, int later, string why)
    {
        ImmutableArray<decimal> typed =
        [
            .. shares
                .Split(',')
                .Select(s => decimal.Parse(s, System.Globalization.CultureInfo.InvariantCulture)),
        ];
        var refusal = Assert.Throws<ArgumentException>(() =>
            DaySpread.Checked(Own(typed, later), 6)
        );
        Assert.Contains(why, refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Occasions_too_near_one_another_are_refused()
    {
        var late = DayShape.Of(7);
        late = late.SetItem(4, late[4] with { Time = new LocalTime(18, 0) })
            .SetItem(5, late[5] with { Time = new LocalTime(18, 30) });
        var refusal = Assert.Throws<ArgumentException>(() => DaySpread.Checked(late, 7));
        Assert.Contains(
            "Evening meal comes less than 45 min after late afternoon snack",
            refusal.Message,
            StringComparison.Ordinal
        );
    }

    /// <summary>Every allowed hour of every sitting, races from before dawn to the evening.</summary>
    [Theory]
    [InlineData(5)]
    [InlineData(6)]
    [InlineData(7)]
    public void Whatever_times_are_allowed_the_sittings_of_the_eve_follow_one_another(int occasions)
    {
        var house = DayShape.Of(occasions);
        var dice = new Random(occasions);
        for (var trial = 0; trial < 2000; trial++)
        {
            ImmutableArray<Sitting> own =
            [
                .. house.Select(s => s with { Time = s.Time.PlusMinutes(dice.Next(-4, 5) * 15) }),
            ];
            if (DaySpread.Problem(own) is not null)
                continue;
            var choices = new LoadingChoices
            {
                OccasionsPerDay = occasions,
                Sittings = DaySpread.Checked(own, occasions),
            };
            var eve = Days(choices, 36, dice.Next(5, 21))[^1]
                .Occasions.Select(o => o.Time)
                .ToList();
            Assert.Equal(eve.Distinct().Order(), eve);
        }
    }

    private static ImmutableArray<PlanDay> Days(
        LoadingChoices choices,
        int hours,
        int startHour = 9
    ) =>
        LoadingLayout.Days(
            new LocalDateTime(2026, 10, 11, startHour, 0),
            BodyMass.OfKilograms(70),
            choices with
            {
                WindowHours = hours,
            },
            SampleTargets.At(700) with
            {
                WindowHours = hours,
            },
            Adjustments.None
        );
}
