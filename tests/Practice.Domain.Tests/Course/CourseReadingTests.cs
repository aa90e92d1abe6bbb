using NodaTime;
using Practice.Domain.Course;
using Practice.Domain.Foods;
using Practice.Domain.Races;
using Practice.Domain.Screening;

namespace Practice.Domain.Tests.Course;

public class CourseReadingTests
{
    [Fact]
    public void Hours_add_up_to_the_race()
    {
        var plan = Marathon.In(210).Take("gel", 5).Take("drink", 12).Take("gel-isotonic", 30).Plan;
        Assert.Equal(4, plan.Hours.Length);
        Assert.Equal(Duration.FromMinutes(210), plan.Hours[^1].To);
        Assert.Equal(plan.Total.CarbohydrateG, plan.Hours.Sum(h => h.Totals.CarbohydrateG));
        Assert.Equal(25 + 9 + 22, plan.Total.CarbohydrateG);
        Assert.Equal(plan.Total.FluidMl, plan.Hours.Sum(h => h.Totals.FluidMl));
    }

    [Fact]
    public void Clock_times_follow_the_place()
    {
        // check K08: 30 km at 3:30:00 are passed after 8958.4 s
        var step = Assert.Single(Marathon.In(210).Take("gel-isotonic", 30).Plan.Steps);
        Assert.Equal(8958.4, step.Elapsed.TotalSeconds, tolerance: 1);
    }

    [Fact]
    public void A_drink_dragged_along_the_course_goes_to_the_nearest_station()
    {
        var sheet = Marathon.In(210).Take("drink", 5).Case.Sheet;
        var moved = CourseEdits.Move(sheet, sheet.Steps[0].Id, 13.4m);
        Assert.Equal(12.5m, moved.Steps[0].Km);
        Assert.True(moved.Steps[0].Locked);
        Assert.Equal(1, CourseEdits.Count(moved, sheet.Steps[0].Id, 1).Steps[0].Count);
        Assert.Empty(CourseEdits.Count(moved, sheet.Steps[0].Id, 0).Steps);
    }

    [Fact]
    public void More_sugar_than_the_gut_takes_stops_the_plan()
    {
        var greedy = Marathon.In(210);
        foreach (var km in new[] { 10m, 11, 12, 13, 14 })
            greedy = greedy.Take("gel-isotonic", km);
        var warning = Assert.Single(greedy.Plan.Warnings, w => w.Rule == CourseRule.Glucose);
        Assert.Equal(WarningWeight.Stop, warning.Weight);
        Assert.True(greedy.Plan.IsStopped);
    }

    [Fact]
    public void A_plan_that_gains_mass_is_stopped()
    {
        var sipping = Marathon.In(210).With(c => c with { SweatLPerHour = 0.3m });
        foreach (var km in new[] { 2.5m, 7.5m, 12.5m, 17.5m, 22.5m, 27.5m, 32.5m, 37.5m })
            sipping = sipping.Take(Product.WaterId, km);
        Assert.Contains(
            sipping.Plan.Warnings,
            w => w is { Rule: CourseRule.Fluid, Weight: WarningWeight.Stop }
        );
    }

    [Fact]
    public void A_gel_without_its_water_is_told()
    {
        var dry = Marathon.In(210).Take("gel", 6);
        Assert.Contains(dry.Plan.Warnings, w => w.Rule == CourseRule.WaterWithFood);
        Assert.DoesNotContain(
            dry.Take(Product.WaterId, 5).Plan.Warnings,
            w => w.Rule == CourseRule.WaterWithFood
        );
    }

    [Fact]
    public void More_than_is_carried_is_told()
    {
        var full = Marathon.In(210);
        for (var km = 5m; km <= 37; km += 4)
            full = full.Take("gel-isotonic", km);
        Assert.Contains(full.Plan.Warnings, w => w.Rule == CourseRule.Supply);
    }

    [Fact]
    public void Caffeine_that_was_not_rehearsed_stops_the_plan()
    {
        var plan = Marathon.In(210).Take("gel-caffeine", 27.5m).Plan;
        Assert.Contains(
            plan.Warnings,
            w => w is { Rule: CourseRule.Product, Weight: WarningWeight.Stop }
        );
        Assert.DoesNotContain(plan.Products, p => p.CaffeineMg > 0);
    }

    [Fact]
    public void Black_heat_stops_any_plan() =>
        Assert.True(Marathon.In(210).With(c => c with { RaceHeatC = 28.1m }).Plan.IsStopped);

    [Fact]
    public void A_sweat_test_of_other_weather_is_stale() =>
        Assert.Contains(
            Marathon
                .In(210)
                .With(c => c with { SweatTestHeatC = 10, RaceHeatC = 16 })
                .Plan.Warnings,
            w => w.Rule == CourseRule.MissingFact
        );

    [Fact]
    public void A_label_nobody_has_read_is_nothing_for_an_allergic_client()
    {
        var unread = Marathon
            .In(210)
            .On(s =>
                s with
                {
                    Products = [.. s.Products.Select(p => p with { Allergens = null })],
                }
            );
        Assert.Contains(unread.Plan.Products, p => p.Id == "gel");
        var allergic = unread.For(c =>
            c with
            {
                Diet = c.Diet with { Allergies = [Allergen.Soya] },
            }
        );
        Assert.Equal([Product.WaterId], allergic.Plan.Products.Select(p => p.Id));
        Assert.True(allergic.Take("gel-isotonic", 10).Plan.IsStopped);
    }

    [Fact]
    public void Hereditary_intolerance_leaves_no_fructose() =>
        Assert.All(
            Marathon.In(210).Screened(new() { NoFructoseAtAll = true }).Plan.Products,
            p => Assert.Equal(0, p.FructoseG)
        );

    [Fact]
    public void Nothing_is_taken_in_the_swim()
    {
        var legs = new TriathlonLegs(
            4,
            Duration.FromMinutes(80),
            180,
            Duration.FromMinutes(360),
            Duration.FromMinutes(15)
        );
        var swimmer = Marathon
            .In(720)
            .For(c => c with { Discipline = Discipline.Triathlon })
            .On(s => s with { Profile = CourseProfile.Typed(226) })
            .With(c => c with { Legs = legs })
            .Take("gel-isotonic", 3);
        Assert.True(swimmer.Plan.IsStopped);
    }

    [Fact]
    public void What_the_client_reads_beside_the_steps_has_no_number_with_a_unit()
    {
        var plan = Marathon
            .In(300)
            .With(c => c with { RaceHeatC = 25 })
            .On(s =>
                s with
                {
                    Products =
                    [
                        .. s.Products,
                        s.Find("gel")! with
                        {
                            Id = "own",
                            Name = "Gel of 25 g",
                        },
                    ],
                }
            )
            .Take("gel", 5)
            .Take("own", 7)
            .Take("drink", 10)
            .Plan;
        Assert.All(
            plan.Advice.Concat(plan.Steps.Select(s => s.Words)),
            text => Assert.True(NumberFree.Allows(text), text)
        );
    }

    [Fact]
    public void Splits_end_at_the_finish_by_both_pacings()
    {
        var hilly = Hills.Marathon(210);
        var last = hilly.Plan.Splits[^1];
        Assert.Equal(42.195m, last.Km);
        Assert.Equal(210, last.EvenPace.TotalMinutes, tolerance: 1e-6);
        Assert.Equal(210, last.EvenEffort.TotalMinutes, tolerance: 1e-6);
        // uphill first: an even effort is behind an even pace at half way
        var half = hilly.Plan.Splits.Single(s => s.Km == 21);
        Assert.True(half.EvenEffort > half.EvenPace);
    }

    [Fact]
    public void No_effort_is_told_from_pace_on_a_bike() =>
        Assert.All(
            Hills.Marathon(210).For(c => c with { Discipline = Discipline.Cycling }).Plan.Splits,
            s => Assert.Equal(s.EvenPace, s.EvenEffort)
        );
}

internal static class Hills
{
    /// <summary>Up 4 % to half way and down again.</summary>
    public static Marathon Marathon(double minutes) =>
        Course
            .Marathon.In(minutes)
            .On(s =>
                s with
                {
                    Profile = s.Profile with
                    {
                        Points = [new(0, 0), new(21, 840), new(42, 0), new(42.195m, 0)],
                    },
                }
            );
}
