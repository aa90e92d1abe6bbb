using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Foods;
using Practice.Domain.Plans;
using Practice.Domain.Quantities;
using Practice.Domain.Screening;
using Practice.Domain.Targets;

namespace Practice.Domain.Tests.Plans;

public class LoadingLayoutTests
{
    private static readonly BodyMass Seventy = BodyMass.OfKilograms(70);
    private static readonly LocalDateTime Sunday9 = new(2027, 4, 18, 9, 0);

    // Trade facts P01 to P06: the front-loaded split of 700 g, common practice, no source.
    [Theory]
    [InlineData(OccasionKind.Breakfast, 175)]
    [InlineData(OccasionKind.MorningSnack, 105)]
    [InlineData(OccasionKind.Lunch, 175)]
    [InlineData(OccasionKind.AfternoonSnack, 105)]
    [InlineData(OccasionKind.EveningMeal, 105)]
    [InlineData(OccasionKind.Supper, 35)]
    public void The_eve_of_700_g_is_split_front_loaded(OccasionKind kind, decimal grams) =>
        Assert.Equal(grams, Days(36)[^1][kind].CarbohydrateAimG, 3);

    [Theory]
    [InlineData(5)]
    [InlineData(6)]
    [InlineData(7)]
    public void The_shares_of_a_full_day_sum_to_one(int occasions) =>
        Assert.Equal(1m, DayShape.Of(occasions).Sum(s => s.Share));

    [Theory]
    [InlineData(5)]
    [InlineData(6)]
    [InlineData(7)]
    public void Sittings_follow_one_another_through_the_day(int occasions)
    {
        var times = Days(48, occasions)[^1].Occasions.Select(o => o.Time).ToList();
        Assert.Equal(times.Order(), times);
        Assert.Equal(times.Distinct(), times);
    }

    // Trade fact P08: a 36 h window at 10 g/kg for 70 kg is 140 g on the evening two days before, 700 g on the eve and
    // 210 g of race breakfast, together 1050 g (T05); common practice, no source.
    [Fact]
    public void A_36_h_window_is_an_evening_a_whole_day_and_the_race_breakfast()
    {
        var days = Days(36);

        Assert.Equal([2, 1], days.Select(d => d.DaysBefore));
        Assert.Equal(140m, days[0].Limits.CarbohydrateAimG, 3);
        Assert.Equal(
            [OccasionKind.EveningMeal, OccasionKind.Supper],
            days[0].Occasions.Select(o => o.Kind)
        );
        Assert.Equal(700m, days[1].Limits.CarbohydrateAimG, 3);
        Assert.Equal(1050m, days.Sum(d => d.Limits.CarbohydrateAimG) + 210m, 3);
    }

    // Trade fact: a 48 h window adds 350 g to the 36 h one; common practice, no source.
    [Fact]
    public void A_48_h_window_adds_350_g_on_the_day_before_the_eve() =>
        Assert.Equal(490m, Days(48)[0].Limits.CarbohydrateAimG, 3);

    [Theory]
    [InlineData(24)]
    [InlineData(36)]
    [InlineData(48)]
    [InlineData(60)]
    [InlineData(72)]
    [InlineData(84)]
    [InlineData(96)]
    public void Sittings_sum_to_their_day_and_days_to_the_window(int hours)
    {
        var days = Days(hours);

        Assert.All(
            days,
            d =>
                Assert.Equal(d.Limits.CarbohydrateAimG, d.Occasions.Sum(o => o.CarbohydrateAimG), 6)
        );
        Assert.Equal(700m * hours / 24 - 210m, days.Sum(d => d.Limits.CarbohydrateAimG), 3);
        Assert.Equal(1, days[^1].DaysBefore);
    }

    // Common practice, no source: last substantial meal 12 to 14 h before the start, between 17:00 and 19:00.
    [Theory]
    [InlineData(7, 0, 18, 0)]
    [InlineData(9, 0, 19, 0)]
    [InlineData(5, 0, 17, 0)]
    [InlineData(14, 0, 19, 0)]
    public void The_eve_ends_early_enough_for_the_start(
        int startHour,
        int startMinute,
        int mealHour,
        int mealMinute
    )
    {
        var start = new LocalDateTime(2027, 4, 18, startHour, startMinute);
        var eve = LoadingLayout.Days(
            start,
            Seventy,
            new LoadingChoices(),
            SampleTargets.At(700),
            Adjustments.None
        )[^1];

        Assert.Equal(new LocalTime(mealHour, mealMinute), eve[OccasionKind.EveningMeal].Time);
    }

    [Fact]
    public void Lactose_is_tightened_on_the_last_day_only_where_it_is_limited()
    {
        var limited = Adjustments.None with { LactoseMaxPerOccasionG = 12 };
        var days = LoadingLayout.Days(
            Sunday9,
            Seventy,
            new LoadingChoices { WindowHours = 48 },
            SampleTargets.At(700) with
            {
                WindowHours = 48,
            },
            limited
        );

        Assert.Equal(12m, days[0].Limits.LactoseMaxPerOccasionG);
        Assert.Equal(6m, days[1].Limits.LactoseMaxPerOccasionG);
        Assert.Null(Days(48)[1].Limits.LactoseMaxPerOccasionG);
    }

    [Fact]
    public void An_event_too_short_to_load_for_gets_the_whole_eve_and_no_more()
    {
        var toppingUp = SampleTargets.At(490) with { Loads = false, WindowHours = 24 };
        var day = Assert.Single(
            LoadingLayout.Days(Sunday9, Seventy, new LoadingChoices(), toppingUp, Adjustments.None)
        );

        Assert.Equal(1, day.DaysBefore);
        Assert.Equal(490m, day.Limits.CarbohydrateAimG);
    }

    private static ImmutableArray<PlanDay> Days(int hours, int occasions = 6) =>
        LoadingLayout.Days(
            Sunday9,
            Seventy,
            new LoadingChoices { WindowHours = hours, OccasionsPerDay = occasions },
            SampleTargets.At(700) with
            {
                WindowHours = hours,
            },
            Adjustments.None
        );
}
