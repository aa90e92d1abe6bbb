using NodaTime;
using Practice.Domain.Clients;
using Practice.Domain.Quantities;
using Practice.Domain.Races;
using Practice.Domain.Screening;
using Practice.Domain.Targets;

namespace Practice.Domain.Tests.Targets;

public class LoadingTargetsTests
{
    private static readonly Athlete Man = Athlete.MiddlingMan;

    // T01, T05: 70 kg at 10 g/kg is 700 g a day and 1050 g in 36 h. Thomas, Erdman, Burke 2016; trade's working target.
    [Fact]
    public void Seventy_kilograms_load_700_g_a_day_and_1050_g_in_36_h()
    {
        var targets = Man.Targets();
        Assert.True(targets.Loads);
        Assert.Equal(10m, targets.CarbohydrateRate.Aim);
        Assert.Equal(700m, targets.CarbohydratePerDay.Aim);
        Assert.Equal(1050m, targets.CarbohydrateTotal.Aim);
    }

    // T04: 12 g/kg for 70 kg is 840 g. Thomas, Erdman, Burke 2016.
    [Theory]
    [InlineData(12, 840)]
    [InlineData(15, 840)]
    [InlineData(8, 560)]
    public void A_chosen_rate_is_held_to_the_guideline(int chosen, int gramsPerDay) =>
        Assert.Equal(gramsPerDay, AtRate(chosen).Targets().CarbohydratePerDay.Aim);

    [Fact]
    public void Below_seven_it_is_topping_up()
    {
        var rate = AtRate(6.9m).Targets().CarbohydrateRate;
        Assert.Contains("topping up", rate.Name, StringComparison.Ordinal);
        Assert.Contains("not loading", rate.Basis.Note, StringComparison.Ordinal);
    }

    [Fact]
    public void Seven_is_not_called_topping_up() =>
        Assert.Equal("Carbohydrate rate", AtRate(7).Targets().CarbohydrateRate.Name);

    [Theory]
    [InlineData(89, false)]
    [InlineData(90, true)]
    public void An_event_loads_from_90_min_on(int minutes, bool loads) =>
        Assert.Equal(loads, (Man with { Goal = Duration.FromMinutes(minutes) }).Targets().Loads);

    // Wallis and Podlogar 2022: 7 to 12 g/kg over 24 h before shorter events.
    [Fact]
    public void A_short_event_tops_up_for_a_day_at_seven()
    {
        var targets = (Man with { DistanceKm = 10, Goal = Duration.FromMinutes(45) }).Targets();
        Assert.False(targets.Loads);
        Assert.Equal(24, targets.WindowHours);
        Assert.Equal((7m, 7m, 12m), Band(targets.CarbohydrateRate));
        Assert.Equal(490m, targets.CarbohydrateTotal.Aim);
        Assert.Equal(0m, targets.Benefit.Aim);
    }

    [Theory]
    [InlineData(Discipline.RoadRunning, 10, false)]
    [InlineData(Discipline.RoadRunning, 21.1, true)]
    [InlineData(Discipline.Cycling, 30, false)]
    [InlineData(Discipline.Cycling, 100, true)]
    public void Without_goal_and_result_the_distance_decides(
        Discipline discipline,
        double km,
        bool loads
    )
    {
        var targets = (
            Man with
            {
                Goal = null,
                Recent = null,
                Discipline = discipline,
                DistanceKm = (decimal)km,
            }
        ).Targets();
        Assert.Null(targets.ExpectedFinish.Aim);
        Assert.Equal(loads, targets.Loads);
    }

    // T20: 90 kg and 35 % fat at 12 g/kg of fat-free mass is 702 g. Own rule from Fairchild 2002.
    [Fact]
    public void High_body_fat_loads_by_fat_free_mass()
    {
        var targets = (Man with { MassKg = 90, BodyFatPercent = 35 }).Targets();
        Assert.Equal(702m, targets.CarbohydratePerDay.Aim!.Value, 6);
    }

    [Theory]
    [InlineData(Sex.Male, 25, 10)]
    [InlineData(Sex.Male, 26, 8.88)]
    [InlineData(Sex.Female, 35, 10)]
    [InlineData(Sex.Female, 36, 7.68)]
    [InlineData(Sex.Female, 50, 7)]
    public void The_body_fat_rule_starts_above_its_limit_and_never_goes_below_seven(
        Sex sex,
        int percent,
        double rate
    ) =>
        Assert.Equal(
            (decimal)rate,
            (Man with { Sex = sex, BodyFatPercent = percent })
                .Targets()
                .CarbohydrateRate.Aim!.Value,
            6
        );

    [Fact]
    public void A_BMI_above_30_loads_by_estimated_fat_free_mass_and_asks_for_a_measurement()
    {
        var rate = (Man with { MassKg = 100 }).Targets().CarbohydrateRate;
        // Boer 1984: 0.407 x 100 + 0.267 x 175 - 19.2 = 68.225 kg
        Assert.Equal(12 * 0.68225m, rate.Aim!.Value, 6);
        Assert.Contains("measure body fat", rate.Basis.Note, StringComparison.Ordinal);
    }

    // Screening: under 18 6 to 8 g/kg; diabetes without insulin 5 to 7.
    [Theory]
    [InlineData(6, 8, 7)]
    [InlineData(5, 7, 6)]
    public void Screening_sets_the_range_and_starts_at_its_middle(int low, int high, int start)
    {
        var rate = Screened(Range(low, high)).Targets().CarbohydrateRate;
        Assert.Equal((low, start, high), Band(rate));
    }

    [Fact]
    public void A_choice_never_goes_above_what_screening_allows()
    {
        var rate = (AtRate(10) with { Adjustments = Range(5, 7) }).Targets().CarbohydrateRate;
        Assert.Equal(7m, rate.Aim);
        Assert.Contains("held to its upper end", rate.Basis.Note, StringComparison.Ordinal);
    }

    [Fact]
    public void Screening_and_body_fat_together_take_the_lower_start()
    {
        var heavy = Man with { MassKg = 90, BodyFatPercent = 40, Adjustments = Range(6, 12) };
        Assert.Equal(7.2m, heavy.Targets().CarbohydrateRate.Aim!.Value, 6);
    }

    // T09: 0.83 g/kg of 70 kg is 58.1 g. EFSA 2012.
    [Fact]
    public void Protein_has_the_population_floor_and_its_own_aim() =>
        Assert.Equal((58.1m, 77m, 98m), Band(Man.Targets().Protein));

    [Fact]
    public void The_protein_floor_is_left_to_the_metabolic_team_where_screening_says_so()
    {
        var targets = Screened(new() { NoProteinFloor = true }).Targets();
        Assert.Equal((null, null, null), Band(targets.Protein));
        Assert.Contains("metabolic team", targets.Energy.Basis.Note, StringComparison.Ordinal);
    }

    [Fact]
    public void Fat_is_at_most_1_g_per_kg() =>
        Assert.Equal((20m, null, 70m), Band(Man.Targets().Fat));

    [Fact]
    public void Fat_is_at_most_a_quarter_of_energy()
    {
        var targets = AtRate(4).Targets();
        var others = 4 * (280m + 77m) + 2 * 15m;
        var fat = targets.Fat.High!.Value;
        Assert.InRange(fat, 20, 69.9m);
        Assert.Equal(0.25m, 9 * fat / (others + 9 * fat), 6);
    }

    [Fact]
    public void Low_residue_is_off_where_screening_says_so() =>
        Assert.Null(Screened(new() { NoLowResidue = true }).Targets().Fibre.High);

    [Fact]
    public void Drinking_to_thirst_leaves_no_drinking_plan() =>
        Assert.Equal(
            (null, null, null),
            Band(Screened(new() { ThirstOnly = true }).Targets().Fluid)
        );

    [Fact]
    public void Without_added_sodium_there_is_no_floor_and_the_population_limit() =>
        Assert.Equal(
            (null, null, 2300m),
            Band(Screened(new() { NoAddedSodium = true }).Targets().Sodium)
        );

    [Theory]
    [InlineData(20, 20)]
    [InlineData(80, 50)]
    public void Screening_lowers_the_fructose_ceiling_and_never_raises_it(
        int screened,
        int ceiling
    ) =>
        Assert.Equal(
            ceiling,
            Screened(new() { FructoseMaxPerOccasionG = screened })
                .Targets()
                .FructosePerOccasion.High
        );

    [Fact]
    public void No_own_value_lets_fructose_past_hereditary_intolerance()
    {
        var choices = Man.Choices with { Overrides = [Own(TargetKeys.FructosePerOccasion, 40)] };
        var targets = (
            Screened(new() { NoFructoseAtAll = true }) with
            {
                Choices = choices,
            }
        ).Targets();
        Assert.Equal(0m, targets.FructosePerOccasion.High);
    }

    // Tarnopolsky 1995.
    [Fact]
    public void A_woman_is_told_when_energy_must_rise() =>
        Assert.Contains(
            "energy must rise on this day",
            Athlete.LightWoman.Targets().Energy.Basis.Note,
            StringComparison.Ordinal
        );

    // Sedlock 2008.
    [Fact]
    public void A_woman_is_told_that_eight_is_little()
    {
        var rate = (Athlete.LightWoman with { Choices = new() { CarbohydrateGPerKg = 8 } })
            .Targets()
            .CarbohydrateRate;
        Assert.Contains("above 8 g/kg", rate.Basis.Note, StringComparison.Ordinal);
    }

    [Fact]
    public void Under_18_is_not_measured_by_equations_for_adults()
    {
        var energy = (Man with { Age = 17 }).Targets().Energy;
        Assert.DoesNotContain(
            energy.Basis.Inputs,
            i => i.Name.StartsWith("Usual daily need", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void A_goal_faster_than_Riegel_raises_a_pacing_warning()
    {
        var finish = (Man with { Goal = Duration.FromMinutes(180) }).Targets().ExpectedFinish;
        Assert.Contains("check the pacing", finish.Basis.Note, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_goal_the_prediction_is_what_to_expect()
    {
        var finish = (Man with { Goal = null }).Targets().ExpectedFinish;
        Assert.Equal(12248.5 / 60, (double)finish.Aim!.Value, 0.02);
    }

    [Fact]
    public void A_trail_race_is_not_predicted_from_a_road_race()
    {
        var trail = Man with { Goal = null, Discipline = Discipline.TrailRunning };
        Assert.Null(trail.Targets().ExpectedFinish.Aim);
    }

    [Fact]
    public void Targets_need_a_sensible_window()
    {
        var choices = new LoadingChoices { WindowHours = 12 };
        Assert.Throws<ArgumentException>(() => (Man with { Choices = choices }).Targets());
    }

    [Fact]
    public void Each_target_has_its_key_and_its_sources()
    {
        var targets = Man.Targets().All.ToList();
        Assert.Equal(targets.Count, targets.Select(t => t.Key).Distinct().Count());
        Assert.All(targets, t => Assert.NotEmpty(t.Basis.Sources));
    }

    private static Athlete AtRate(decimal gramsPerKg) =>
        Man with
        {
            Choices = new() { CarbohydrateGPerKg = gramsPerKg },
        };

    private static Athlete Screened(Adjustments adjustments) =>
        Man with
        {
            Adjustments = adjustments,
        };

    private static Adjustments Range(decimal low, decimal high) =>
        new() { CarbohydrateRateLow = low, CarbohydrateRateHigh = high };

    private static TargetOverride Own(string key, decimal value) =>
        new(key, value, null, "Practitioner", Instant.FromUtc(2026, 9, 1, 8, 0), "Tested");

    private static (decimal? Low, decimal? Aim, decimal? High) Band(Target target) =>
        (target.Low, target.Aim, target.High);
}
