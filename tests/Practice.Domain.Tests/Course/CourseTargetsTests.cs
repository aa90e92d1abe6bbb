using NodaTime;
using Practice.Domain.Course;
using Practice.Domain.Races;
using Practice.Domain.Screening;

namespace Practice.Domain.Tests.Course;

public class CourseTargetsTests
{
    // own table inside the guideline ranges of Thomas 2016 and Jeukendrup 2014 (docs/science.md, section course)
    [Theory]
    [InlineData(140, GutTraining.NotTrained, 45)]
    [InlineData(140, GutTraining.Rehearsed, 60)]
    [InlineData(140, GutTraining.WellTrained, 75)]
    [InlineData(150, GutTraining.WellTrained, 75)]
    [InlineData(210, GutTraining.NotTrained, 45)]
    [InlineData(210, GutTraining.Rehearsed, 60)]
    [InlineData(211, GutTraining.NotTrained, 40)]
    [InlineData(240, GutTraining.Rehearsed, 55)]
    [InlineData(240, GutTraining.WellTrained, 60)]
    public void Carbohydrate_starts_by_duration_and_gut(
        double minutes,
        GutTraining gut,
        int gPerHour
    ) => Assert.Equal(gPerHour, Marathon.In(minutes).WithGut(gut).Targets.Carbohydrate.Aim);

    [Theory]
    [InlineData(30, 40)]
    [InlineData(45, 55)]
    [InlineData(60, 70)]
    public void Carbohydrate_never_passes_what_was_tolerated_and_ten(int tolerated, int most)
    {
        var target = Marathon
            .In(200)
            .WithGut(GutTraining.Rehearsed, tolerated)
            .Overriding(CourseTargetKeys.Carbohydrate, 85)
            .Targets.Carbohydrate;
        Assert.Equal(most, target.High);
        Assert.Equal(most, target.Aim);
    }

    [Fact]
    public void More_than_ninety_needs_a_decision()
    {
        var wanting = Marathon
            .In(200)
            .WithGut(GutTraining.WellTrained, tolerated: 100)
            .Overriding(CourseTargetKeys.Carbohydrate, 108);
        Assert.Equal(90, wanting.Targets.Carbohydrate.Aim);
        Assert.Equal(
            108,
            wanting.With(c => c with { AllowAboveNinety = true }).Targets.Carbohydrate.Aim
        );
    }

    [Theory]
    [InlineData(44, 0)]
    [InlineData(70, 30)]
    public void A_short_race_needs_next_to_nothing(double minutes, int most)
    {
        var target = Marathon.In(minutes).Targets.Carbohydrate;
        Assert.Null(target.Aim);
        Assert.Equal(most, target.High);
    }

    [Fact]
    public void Screening_lowers_rate_and_fructose()
    {
        // hereditary fructose intolerance after clearance: no fructose, 60 g/h
        var targets = Marathon
            .In(200)
            .WithGut(GutTraining.WellTrained)
            .Screened(new() { RaceFructoseMaxGPerHour = 0, RaceCarbohydrateMaxGPerHour = 60 })
            .Targets;
        Assert.Equal(60, targets.Carbohydrate.High);
        Assert.Equal(0, targets.Fructose.High);
    }

    [Fact]
    public void Drinking_never_passes_the_sweat_rate()
    {
        var fluid = Marathon.In(210).With(c => c with { SweatLPerHour = 0.4m }).Targets.Fluid;
        Assert.Equal(0.4m, fluid.High);
        Assert.Equal(0, fluid.Low);
    }

    [Theory]
    [InlineData(200, 70, 0.8)]
    [InlineData(250, 70, 0.5)]
    [InlineData(200, 55, 0.5)]
    public void Without_a_sweat_test_those_at_risk_are_offered_less(
        double minutes,
        int mass,
        double most
    ) =>
        Assert.Equal(
            (decimal)most,
            Marathon
                .In(minutes)
                .For(c => c with { BodyMass = Quantities.BodyMass.OfKilograms(mass) })
                .With(c => c with { SweatLPerHour = null })
                .Targets.Fluid.High
        );

    [Fact]
    public void Who_drinks_to_thirst_gets_no_aim()
    {
        var fluid = Marathon.In(210).Screened(new() { ThirstOnly = true }).Targets.Fluid;
        Assert.Null(fluid.Aim);
        Assert.Null(fluid.Low);
        Assert.NotNull(fluid.High);
    }

    [Fact]
    public void No_sodium_is_aimed_at_where_screening_says_so()
    {
        var sodium = Marathon.In(210).Screened(new() { NoAddedSodium = true }).Targets.Sodium;
        Assert.Null(sodium.Low);
        Assert.Null(sodium.High);
    }

    [Theory]
    [InlineData(3, 0, 210)]
    [InlineData(3, 150, 60)]
    [InlineData(6, 100, 300)]
    [InlineData(3, 500, 0)]
    public void Caffeine_keeps_to_dose_and_day(int mgPerKg, int before, int most) =>
        Assert.Equal(
            most,
            Marathon
                .In(210)
                .With(c => c with { CaffeineMgPerKg = mgPerKg, CaffeineBeforeMg = before })
                .Targets.Caffeine.High
        );

    [Fact]
    public void In_the_heat_caffeine_stays_at_three()
    {
        var hot = Marathon.In(210).With(c => c with { CaffeineMgPerKg = 5, RaceHeatC = 24 });
        Assert.Equal(210, hot.Targets.Caffeine.High);
    }

    [Fact]
    public void There_is_no_caffeine_under_eighteen_or_after_screening()
    {
        var asking = Marathon.In(210).With(c => c with { CaffeineMgPerKg = 3 });
        Assert.Equal(0, asking.For(c => c with { AgeYears = 17 }).Targets.Caffeine.High);
        Assert.Equal(0, asking.Screened(new() { NoRaceCaffeine = true }).Targets.Caffeine.High);
    }

    [Fact]
    public void Each_discipline_has_its_own_cost()
    {
        var marathon = Marathon.In(240);
        Assert.Equal(70 * 42.195m, marathon.Targets.Energy.Aim);
        Assert.Equal(
            0.5m * (70 + 10) * 42.195m,
            marathon
                .For(c => c with { Discipline = Discipline.Walking })
                .With(c => c with { LoadKg = 10 })
                .Targets.Energy.Aim
        );
        var ride = marathon.For(c => c with { Discipline = Discipline.Cycling });
        Assert.Null(ride.Targets.Energy.Aim);
        // check E15, from memory: 782.2 kcal an hour at 200 W
        Assert.Equal(
            4 * 782.2,
            (double)ride.With(c => c with { BikeWatts = 200 }).Targets.Energy.Aim!.Value,
            tolerance: 4
        );
    }

    [Fact]
    public void A_triathlon_sums_its_legs()
    {
        var legs = new TriathlonLegs(
            1.9m,
            Duration.FromMinutes(40),
            90,
            Duration.FromMinutes(180),
            Duration.FromMinutes(10),
            SwimKcalPerHour: 600
        );
        var triathlon = Marathon
            .In(350)
            .For(c => c with { Discipline = Discipline.Triathlon })
            .On(s => s with { Profile = CourseProfile.Typed(113) })
            .With(c => c with { Legs = legs, BikeWatts = 200 });
        var run = 70 * (113 - 91.9);
        Assert.Equal(
            400 + 3 * 782.2 + run,
            (double)triathlon.Targets.Energy.Aim!.Value,
            tolerance: 4
        );
        Assert.Equal(40, triathlon.Case.Pace.At(1.89999m).TotalMinutes, tolerance: 0.01);
        Assert.Equal(225, triathlon.Case.Pace.At(91.89999m).TotalMinutes, tolerance: 0.01);
        Assert.Equal(350, triathlon.Case.Pace.At(113).TotalMinutes, tolerance: 0.01);
    }

    [Fact]
    public void Every_target_says_why()
    {
        foreach (var target in Marathon.In(210).Targets.All)
        {
            Assert.NotEmpty(target.Basis.Formula);
            Assert.NotEmpty(target.Basis.Sources);
        }
    }

    [Fact]
    public void Her_own_value_for_what_the_gut_takes_moves_the_ceiling_and_keeps_her_reason()
    {
        var marathon = Marathon
            .In(200)
            .WithGut(GutTraining.Rehearsed, tolerated: 40)
            .Overriding(CourseTargetKeys.Tolerated, 60)
            .Overriding(CourseTargetKeys.CleanTrials, 3);
        var gut = GutTargets.Of(marathon.Case);

        Assert.Equal(GutTraining.WellTrained, gut.Training);
        Assert.Equal((60, 40), (gut.Tolerated.Aim, gut.Tolerated.Override!.Computed));
        Assert.Equal("Asked for.", gut.CleanTrials.Override!.Reason);
        Assert.Equal(70, marathon.Targets.Carbohydrate.High);
    }

    [Fact]
    public void Her_own_aims_stay_within_the_ceilings()
    {
        var targets = Marathon
            .In(200)
            .Overriding(CourseTargetKeys.Fluid, 3)
            .Overriding(CourseTargetKeys.Caffeine, 900)
            .Targets;
        Assert.Equal(targets.Fluid.High, targets.Fluid.Aim);
        Assert.Equal(targets.Caffeine.High, targets.Caffeine.Aim);
        Assert.Equal(
            0.5m,
            Marathon.In(200).Overriding(CourseTargetKeys.Fluid, 0.5m).Targets.Fluid.Aim
        );
    }

    [Fact]
    public void Who_drinks_to_thirst_gets_no_aim_by_her_own_value_either() =>
        Assert.Null(
            Marathon
                .In(200)
                .Screened(new() { ThirstOnly = true })
                .Overriding(CourseTargetKeys.Fluid, 0.5m)
                .Targets.Fluid.Aim
        );

    [Fact]
    public void Ceilings_take_no_own_value() =>
        Assert.Equal(
            [
                CourseTargetKeys.Carbohydrate,
                CourseTargetKeys.Fluid,
                CourseTargetKeys.Caffeine,
                CourseTargetKeys.Energy,
            ],
            Marathon.In(200).Targets.All.Where(CourseTargets.TakesOwnValue).Select(t => t.Key)
        );
}
