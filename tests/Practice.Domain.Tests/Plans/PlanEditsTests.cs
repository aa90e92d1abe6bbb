using NodaTime;
using Practice.Domain.Foods;
using Practice.Domain.Plans;
using Practice.Domain.Quantities;
using Practice.Domain.Screening;
using Practice.Domain.Targets;

namespace Practice.Domain.Tests.Plans;

public class PlanEditsTests
{
    private static readonly LocalDate Eve = new(2027, 4, 17);
    private static readonly PortionRef Toast = new(Eve, OccasionKind.Breakfast, "toast");

    [Fact]
    public void Serving_other_steps_changes_grams_and_totals()
    {
        var plan = Plan().Serve(Toast, 4);

        Assert.Equal(120m, plan[Eve][OccasionKind.Breakfast].Find("toast")!.Grams);
        Assert.Equal(0.3m * 4 * 46.7m, plan[Eve].Totals.CarbohydrateG);
    }

    [Fact]
    public void A_serving_is_never_cut_to_what_nobody_would_serve() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Plan().Serve(Toast, 9));

    [Fact]
    public void Swapping_back_restores_the_plate()
    {
        var before = Plan();
        var toast = before[Eve][OccasionKind.Breakfast].Find("toast")!;
        var bagel = Portion.Of(
            SampleFood.Toast with
            {
                Id = "bagel",
                Name = "Bagel",
            },
            MealRole.Bread,
            2
        );

        var after = before
            .Swap(Toast, bagel)
            .Swap(Toast with { FoodId = "bagel" }, toast)
            .Lock(Toast, locked: false);

        Assert.Equal(before.Days.AsEnumerable(), after.Days);
    }

    [Fact]
    public void What_a_hand_chose_is_locked()
    {
        var jam = Portion.Of(
            SampleFood.Toast with
            {
                Id = "jam",
                Name = "Jam",
            },
            MealRole.Spread,
            1
        );
        var plan = Plan().Add(Eve, OccasionKind.Breakfast, jam);

        Assert.True(plan[Eve][OccasionKind.Breakfast].Find("jam")!.IsLocked);
    }

    [Fact]
    public void The_same_food_is_never_twice_on_a_plate()
    {
        var again = Portion.Of(SampleFood.Toast, MealRole.Bread, 1);
        Assert.Throws<InvalidOperationException>(() =>
            Plan().Add(Eve, OccasionKind.Breakfast, again)
        );
    }

    [Fact]
    public void Removing_takes_only_that_portion()
    {
        var jam = Portion.Of(
            SampleFood.Toast with
            {
                Id = "jam",
                Name = "Jam",
            },
            MealRole.Spread,
            1
        );
        var plan = Plan().Add(Eve, OccasionKind.Breakfast, jam).Remove(Toast);

        Assert.Equal(["jam"], plan[Eve][OccasionKind.Breakfast].Portions.Select(p => p.FoodId));
    }

    [Fact]
    public void Undo_and_redo_walk_the_same_states()
    {
        var first = Plan();
        var second = first.Serve(Toast, 3);
        var third = second.Serve(Toast, 4);
        var history = PlanHistory.Of(first).Then(second).Then(third);

        Assert.Same(second, history.Undo().Present);
        Assert.Same(first, history.Undo().Undo().Undo().Present);
        Assert.Same(third, history.Undo().Undo().Redo().Redo().Redo().Present);
        Assert.False(history.Undo().Then(first).CanRedo);
    }

    [Fact]
    public void An_issued_version_never_changes()
    {
        var now = Instant.FromUtc(2027, 4, 1, 9, 0);
        var version = PlanVersion.Draft(Guid.NewGuid(), Guid.NewGuid(), 1, Plan(), "first", now);
        version.Issue("A. Practitioner", now);

        Assert.Throws<InvalidOperationException>(() => version.Edit(Plan(), now));
        Assert.Throws<InvalidOperationException>(() => version.Issue("A. Practitioner", now));
        version.Withdraw("wrong mass");
        Assert.Equal(PlanStatus.Withdrawn, version.Status);
    }

    private static RaceWeekPlan Plan()
    {
        var header = new PlanHeader
        {
            ClientName = "Ines Example",
            BodyMass = BodyMass.OfKilograms(70),
            RaceName = "Harbour Marathon",
            DistanceKm = 42.195m,
            RaceStart = new LocalDateTime(2027, 4, 18, 9, 0),
            ZoneId = "Europe/London",
        };
        var targets = SampleTargets.At(700);
        var days = LoadingLayout.Days(
            header.RaceStart,
            header.BodyMass,
            new LoadingChoices(),
            targets,
            Adjustments.None
        );
        var breakfast = days[^1][OccasionKind.Breakfast] with
        {
            Portions = [Portion.Of(SampleFood.Toast, MealRole.Bread, 2)],
        };
        return new RaceWeekPlan
        {
            Header = header,
            Choices = new LoadingChoices(),
            Targets = targets,
            Days = days.SetItem(days.Length - 1, days[^1].With(breakfast)),
            Fluids = PlanAdvice.Fluids(Adjustments.None),
            Cautions = [],
            Why = PlanAdvice.Why(header, targets, Adjustments.None),
        };
    }
}
