using System.Text.RegularExpressions;
using NodaTime;
using Practice.Domain.Foods;
using Practice.Domain.Physiology;
using Practice.Domain.Plans.Weeks;
using Practice.Domain.Quantities;
using Practice.Domain.Races;
using Practice.Domain.Screening;
using Practice.Domain.Tests.Plans;

namespace Practice.Domain.Tests.Plans.Weeks;

public partial class WeekLayoutTests
{
    private static readonly BodyMass Seventy = BodyMass.OfKilograms(70);

    [Fact]
    public void The_week_runs_from_seven_days_before_to_the_day_after()
    {
        var week = SampleWeek.Plan().Week!;
        Assert.Equal([7, 6, 5, 4, 3, 2, 1, 0, -1], week.Days.Select(d => d.DaysBefore));
        Assert.Equal(SampleWeek.Start.Date.PlusDays(-7), week.Days[0].Date);
        Assert.Equal(
            [WeekDayKind.Ordinary, WeekDayKind.Loading, WeekDayKind.Eve, WeekDayKind.RaceDay],
            week.Days.Select(d => d.Kind).Distinct().Take(4)
        );
        Assert.All(week.Days, d => Assert.NotEmpty(d.Pointers));
    }

    [Fact]
    public void Race_morning_is_three_grams_a_kilogram_at_three_hours_with_a_second_feed()
    {
        var morning = SampleWeek.Plan().Week!.Morning;
        Assert.Equal(
            [
                (OccasionKind.Breakfast, new LocalTime(6, 0)),
                (OccasionKind.MorningSnack, new LocalTime(7, 45)),
            ],
            morning.Occasions.Select(o => (o.Kind, o.Time))
        );
        // check T06: 70 kg at 3 h is 210 g
        Assert.Equal(210, morning.Occasions.Sum(o => o.CarbohydrateAimG));
        Assert.Equal(
            (15m, 5m, 21m),
            (morning.Limits.FatMaxG, morning.Limits.FibreMaxG, morning.Limits.ProteinMaxG)
        );
    }

    [Fact]
    public void Before_seven_the_meal_is_smaller_and_nearer_to_the_start()
    {
        var early = RaceMorning.Layout(
            SampleWeek.Start.Date.At(new LocalTime(6, 0)),
            Seventy,
            SampleTargets.At(700),
            Adjustments.None
        );
        Assert.Equal(new LocalTime(4, 0), early.Occasions[0].Time);
        Assert.InRange(early.Occasions[0].CarbohydrateAimG, 1.0m * 70, 1.5m * 70);
        Assert.Equal(new LocalTime(5, 15), early.Occasions[1].Time);
    }

    [Fact]
    public void An_afternoon_race_has_breakfast_first()
    {
        var late = RaceMorning.Layout(
            SampleWeek.Start.Date.At(new LocalTime(15, 0)),
            Seventy,
            SampleTargets.At(700),
            Adjustments.None
        );
        Assert.Equal(
            [new LocalTime(8, 0), new LocalTime(12, 0), new LocalTime(13, 45)],
            late.Occasions.Select(o => o.Time)
        );
    }

    [Fact]
    public void Recovery_brings_336_g_at_most_in_four_hours_at_70_kg()
    {
        // check T08
        Assert.Equal(336m, Recovery.CarbohydrateG(70, 1.2m));
        var recovery = SampleWeek.Plan().Week!.Recovery;
        Assert.Equal(308, recovery.Occasions.Sum(o => o.CarbohydrateAimG));
        Assert.Equal(new LocalTime(13, 15), recovery.Occasions[0].Time);
        Assert.InRange(308 * (1 + recovery.Limits.CarbohydrateTolerance), 335.9m, 336.1m);
    }

    [Fact]
    public void Sittings_after_a_late_finish_go_on_past_midnight()
    {
        var recovery = Recovery.Layout(
            SampleWeek.Start.Date.At(new LocalTime(22, 0)),
            Seventy,
            Adjustments.None
        );
        var moments = recovery.Occasions.Select(recovery.MomentOf).ToList();
        Assert.Equal(moments.Order(), moments);
        Assert.Equal(SampleWeek.Start.Date.PlusDays(1), moments[^1].Date);
    }

    [Fact]
    public void Words_hold_no_number_beside_a_unit_and_figures_do()
    {
        var week = SampleWeek.Plan().Week!;
        var all = week
            .Days.SelectMany(d => d.Pointers)
            .Concat(week.MorningAdvice)
            .Concat(week.RecoveryAdvice)
            .Concat(week.Fluids)
            .Concat(week.Caffeine)
            .Concat(week.Sleep)
            .ToList();
        Assert.All(all, a => Assert.DoesNotMatch(NumberWithUnit(), a.For(numberFree: true)));
        Assert.Contains(all, a => NumberWithUnit().IsMatch(a.For(numberFree: false)));
    }

    // checks F05, F06
    [Fact]
    public void Five_to_seven_millilitres_a_kilogram_before_the_start() =>
        Assert.Contains(
            SampleWeek.Plan().Week!.MorningAdvice,
            a => a.Figures.Contains("350 to 490 ml", StringComparison.Ordinal)
        );

    [Fact]
    public void Screening_changes_the_advice()
    {
        var week = SampleWeek
            .Plan(
                new Adjustments
                {
                    ThirstOnly = true,
                    NoRaceCaffeine = true,
                    NoAddedSodium = true,
                    NoLowResidue = true,
                }
            )
            .Week!;
        Assert.DoesNotContain(
            week.MorningAdvice,
            a => a.Figures.Contains("ml", StringComparison.Ordinal)
        );
        Assert.Contains(
            "no caffeine",
            Assert.Single(week.Caffeine).Words,
            StringComparison.Ordinal
        );
        Assert.Single(week.Fluids);
        Assert.DoesNotContain(
            week.Days.SelectMany(d => d.Pointers),
            a => a.Words.Contains("low in fibre", StringComparison.Ordinal)
        );
    }

    [Theory]
    [InlineData(15, 60, HeatColour.Green, 16.5)]
    [InlineData(20, 50, HeatColour.Yellow, 19.9)]
    [InlineData(25, 60, HeatColour.Red, 25.6)]
    [InlineData(30, 70, HeatColour.Black, 32.6)]
    public void A_forecast_becomes_heat_stress_a_flag_and_what_to_do(
        decimal air,
        decimal humidity,
        HeatColour colour,
        decimal heat
    )
    {
        var expected = SampleWeek.Plan(weather: new ExpectedWeather(air, humidity)).Week!.Heat!;
        Assert.Equal((colour, heat), (expected.Colour, expected.WetBulbGlobeC));
        Assert.NotEmpty(expected.Actions);
    }

    [Fact]
    public void A_client_in_another_zone_sees_both_clocks()
    {
        var plan = SampleWeek.Plan(livesIn: "America/New_York");
        Assert.Equal(SampleWeek.Start.PlusHours(-5), BothClocks.Of(plan, SampleWeek.Start).AtHome);
        Assert.Null(
            BothClocks.Of(SampleWeek.Plan(livesIn: "Europe/London"), SampleWeek.Start).AtHome
        );
        Assert.Null(
            BothClocks.Of(SampleWeek.Plan(livesIn: "Europe/Lisbon"), SampleWeek.Start).AtHome
        );
        Assert.Null(BothClocks.Of(SampleWeek.Plan(), SampleWeek.Start).AtHome);
    }

    [Fact]
    public void The_fuel_story_runs_from_the_first_loading_meal_to_the_finish()
    {
        var plan = SampleWeek.Plan();
        var story = FuelStory.Of(plan)!;
        Assert.Equal(42.195, story.With.Points[^1].Km, 3);
        Assert.InRange(story.With.Points[0].Hour, -40, -30);
        Assert.True(story.With.Reserve > story.Without.Reserve);
        Assert.Null(FuelStory.Of(plan with { Week = null }));
        Assert.Null(
            FuelStory.Of(
                plan.EditWeek(w =>
                    w with
                    {
                        Runner = w.Runner! with { Discipline = Discipline.Cycling },
                    }
                )
            )
        );
    }

    [Fact]
    public void The_fuel_story_is_drawn_in_two_halves_that_meet_at_the_start()
    {
        var story = FuelStory.Of(SampleWeek.Plan())!;
        var places = story.With.Points.Select(story.PlaceOf).ToList();
        Assert.Equal((0, 2), (places[0], places[^1]));
        Assert.Equal(places.Order(), places);
        Assert.All(story.WithoutPlan(), p => Assert.InRange(story.PlaceOf(p), 0, 2));
        Assert.Equal(
            ["first meal", "start", "10", "20", "30", "42.2 km"],
            story.Marks().Select(m => m.Label)
        );
    }

    [GeneratedRegex(@"\d\s*(g|kg|mg|ml|L|kcal|%)\b")]
    private static partial Regex NumberWithUnit();
}
