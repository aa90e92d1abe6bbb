using NodaTime;
using Practice.Domain.Foods;
using Practice.Domain.Plans;
using Practice.Domain.Rehearsals;
using Practice.Domain.Tests.Plans;

namespace Practice.Domain.Tests.Rehearsals;

public class PlanDiffTests
{
    private static readonly LocalDate Eve = new(2027, 4, 17);

    [Fact]
    public void The_same_plan_does_not_differ_and_a_lock_is_no_difference()
    {
        var plan = Sample.Plan();
        var locked = plan.Lock(new(Eve, OccasionKind.Lunch, "toast"), locked: true);

        Assert.True(PlanDiff.Of(plan, Sample.Plan()).IsEmpty);
        Assert.True(PlanDiff.Of(plan, locked).IsEmpty);
    }

    [Fact]
    public void What_was_added_removed_and_changed_is_said_with_the_totals()
    {
        var before = Sample.Plan();
        var jam = Portion.Of(
            SampleFood.Toast with
            {
                Id = "jam",
                Name = "Jam",
            },
            MealRole.Spread,
            1
        );
        var after = before
            .Serve(new(Eve, OccasionKind.Breakfast, "toast"), 4)
            .Remove(new(Eve, OccasionKind.Lunch, "toast"))
            .Add(Eve, OccasionKind.Lunch, jam);

        var diff = PlanDiff.Of(before, after);

        Assert.Equal(
            [
                "Saturday 17 April, breakfast: Toast 2 slices (60 g) → 4 slices (120 g)",
                "Saturday 17 April, lunch: Toast removed, 2 slices (60 g)",
                "Saturday 17 April, lunch: Jam added, 1 slice (30 g)",
                "Saturday 17 April: carbohydrate 168 → 182 g, fibre 10 → 11 g, fat 12 → 13 g, protein 32 → 35 g",
            ],
            diff.Lines(HouseholdUnits.Metric).Select(line => line.Replace('\u00A0', ' '))
        );
        var day = Assert.Single(diff.Days);
        Assert.Equal(before[Eve].Totals, day.Before);
        Assert.Equal(after[Eve].Totals, day.After);
    }

    [Fact]
    public void Backwards_it_says_the_opposite()
    {
        var before = Sample.Plan();
        var after = before.Remove(new(Eve, OccasionKind.Lunch, "toast"));
        var (there, back) = (PlanDiff.Of(before, after), PlanDiff.Of(after, before));

        Assert.Equal(there.Days[0].Changes[0].Before, back.Days[0].Changes[0].After);
        Assert.Null(back.Days[0].Changes[0].Before);
    }

    [Fact]
    public void Targets_that_moved_come_first()
    {
        var before = Sample.Plan();
        var after = before with { Targets = SampleTargets.At(525) };

        Assert.Equal(
            "carbohydrate: 700 g/day → 525 g/day",
            PlanDiff.Of(before, after).Lines(HouseholdUnits.Metric).First()
        );
    }
}
