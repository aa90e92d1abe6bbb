using NodaTime;
using Practice.Domain.Clients;
using Practice.Domain.Course;
using Practice.Domain.Foods;
using Practice.Domain.Races;
using Practice.Domain.Screening;
using Practice.Planner.Course;

namespace Practice.Domain.Tests.Course;

public class CourseSchedulerTests
{
    private static readonly CourseScheduler Scheduler = new();

    [Theory]
    [InlineData(180, 80, GutTraining.WellTrained, 1.4)]
    [InlineData(225, 70, GutTraining.Rehearsed, 1.0)]
    [InlineData(300, 55, GutTraining.NotTrained, 0.6)]
    public void A_schedule_breaks_no_ceiling_and_comes_near_its_aim(
        double minutes,
        int mass,
        GutTraining gut,
        double sweat
    )
    {
        var marathon = Marathon
            .In(minutes)
            .For(c => c with { BodyMass = Quantities.BodyMass.OfKilograms(mass) })
            .WithGut(gut)
            .With(c => c with { SweatLPerHour = (decimal)sweat });
        var plan = Planned(marathon).Plan;

        Assert.DoesNotContain(plan.Warnings, w => w.Weight == WarningWeight.Stop);
        Assert.DoesNotContain(
            plan.Warnings,
            w =>
                w.Rule
                    is CourseRule.Carbohydrate
                        or CourseRule.Glucose
                        or CourseRule.Supply
                        or CourseRule.WaterWithFood
        );
        Assert.All(
            plan.Steps,
            s => Assert.True(s.Elapsed <= plan.Finish - Duration.FromMinutes(5))
        );
        Assert.All(
            plan.Steps.Where(s => s.CarbohydrateG > 0),
            s => Assert.True(s.Elapsed <= plan.Finish - FeedTimes.LastBeforeFinish)
        );
    }

    [Fact]
    public void The_same_case_gives_the_same_schedule()
    {
        var marathon = Marathon.In(225);
        Assert.Equal(Planned(marathon).Case.Sheet.Steps, Planned(marathon).Case.Sheet.Steps);
    }

    [Fact]
    public void What_a_hand_put_there_stays_there()
    {
        var marathon = Planned(Marathon.In(225).Take("gel-isotonic", 17.3m));
        var step = Assert.Single(marathon.Case.Sheet.Steps, s => s.Locked);
        Assert.Equal(17.3m, step.Km);
        Assert.DoesNotContain(marathon.Plan.Warnings, w => w.Weight == WarningWeight.Stop);
    }

    [Fact]
    public void Who_drinks_to_thirst_is_planned_little_more_than_the_water_of_the_gels()
    {
        var plan = Planned(Marathon.In(225).Screened(new() { ThirstOnly = true })).Plan;
        Assert.True(plan.FluidLPerHour <= plan.Targets.Fluid.High);
    }

    [Fact]
    public void What_the_client_must_not_have_is_never_planned()
    {
        var allergic = Marathon
            .In(225)
            .On(s => s with { Products = CourseProducts.Standard })
            .For(c => c with { Diet = c.Diet with { Allergies = [Allergen.Oats, Allergen.Soya] } });
        Assert.DoesNotContain(Planned(allergic).Plan.Steps, s => s.ProductId == "bar");
        var intolerant = Marathon
            .In(225)
            .On(s => s with { Products = CourseProducts.Standard })
            .Screened(
                new()
                {
                    NoFructoseAtAll = true,
                    RaceFructoseMaxGPerHour = 0,
                    RaceCarbohydrateMaxGPerHour = 60,
                }
            );
        Assert.Equal(0, Planned(intolerant).Plan.Total.FructoseG);
    }

    [Fact]
    public void Caffeine_comes_late_and_within_its_limit()
    {
        var plan = Planned(Marathon.In(240).With(c => c with { CaffeineMgPerKg = 2 })).Plan;
        var step = Assert.Single(plan.Steps, s => s.CaffeineMg > 0);
        Assert.InRange(step.Elapsed.TotalMinutes, 0.55 * 240, 0.75 * 240);
        Assert.True(plan.Total.CaffeineMg <= plan.Targets.Caffeine.High);
    }

    [Fact]
    public void Nothing_is_planned_in_the_swim()
    {
        var legs = new TriathlonLegs(
            1.9m,
            Duration.FromMinutes(40),
            90,
            Duration.FromMinutes(180),
            Duration.FromMinutes(10)
        );
        var triathlon = Marathon
            .In(350)
            .For(c => c with { Discipline = Discipline.Triathlon })
            .On(s =>
                s with
                {
                    Profile = CourseProfile.Typed(113),
                    Stations = [],
                    Products =
                    [
                        CourseProducts.Standard.Single(p => p.Id == "gel-isotonic"),
                        CourseProducts.Standard.Single(p => p.Id == "bottle") with
                        {
                            CarryLimit = 16,
                        },
                    ],
                }
            )
            .With(c => c with { Legs = legs });
        var plan = Planned(triathlon).Plan;
        Assert.NotEmpty(plan.Steps);
        Assert.All(plan.Steps, s => Assert.True(s.Elapsed.TotalMinutes >= 50));
    }

    [Fact]
    public void A_day_long_race_is_planned_too()
    {
        var ultra = Marathon
            .In(20 * 60)
            .For(c => c with { Discipline = Discipline.TrailRunning })
            .On(s =>
                s with
                {
                    Profile = CourseProfile.Typed(120),
                    Products =
                    [
                        .. CourseProducts.Standard.Select(p =>
                            p.IsCarried ? p with { CarryLimit = 30 } : p
                        ),
                    ],
                }
            )
            .On(s =>
                s.WithStations(
                    Enumerable
                        .Range(1, 11)
                        .Select(i => new AidStation(
                            i * 10,
                            [Product.WaterId, "drink", "banana", "potato"],
                            250
                        ))
                )
            );
        var plan = Planned(ultra).Plan;
        Assert.DoesNotContain(plan.Warnings, w => w.Weight == WarningWeight.Stop);
        Assert.True(plan.CarbohydrateGPerHour > 25);
    }

    [Fact]
    public void Nothing_to_take_is_said_in_words()
    {
        var bare = Marathon.In(225).On(s => s with { Stations = [], Products = [] });
        Assert.Empty(Planned(bare).Plan.Steps);
        var conflict = Assert.Single(
            Scheduler.Explain(bare.Case, TestContext.Current.CancellationToken)
        );
        Assert.Contains("nothing to take", conflict.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Too_little_in_the_pocket_is_said_in_words()
    {
        var light = Marathon
            .In(225)
            .On(s =>
                s with
                {
                    Products =
                    [
                        .. s
                            .Products.Where(p => p.Id is Product.WaterId or "gel-isotonic")
                            .Select(p => p with { CarryLimit = p.IsCarried ? 2 : 0 }),
                    ],
                }
            );
        Assert.Contains(
            Scheduler.Explain(light.Case, TestContext.Current.CancellationToken),
            c =>
                c.Rule == CourseRule.Supply && c.Text.Contains("Carrying", StringComparison.Ordinal)
        );
        Assert.Empty(
            Scheduler.Explain(Marathon.In(225).Case, TestContext.Current.CancellationToken)
        );
    }

    private static Marathon Planned(Marathon marathon) =>
        marathon.On(s =>
            s with
            {
                Steps = Scheduler
                    .Schedule(marathon.Case, null, TestContext.Current.CancellationToken)
                    .Steps,
            }
        );
}
