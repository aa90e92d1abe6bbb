using NodaTime;
using Practice.Domain.Foods;
using Practice.Domain.Plans;
using Practice.Domain.Plans.Weeks;

namespace Practice.Domain.Tests.Plans.Weeks;

public class WeekEditsTests
{
    private static readonly LocalDate Eve = SampleWeek.Start.Date.PlusDays(-1);
    private static readonly Travel AfternoonTrain = new(new LocalTime(12, 0), new LocalTime(17, 0));

    [Fact]
    public void A_note_changes_its_day_and_nothing_else()
    {
        var plan = SampleWeek.Plan();
        var noted = plan.Note(Eve, "  Collect the number before noon.  ");
        Assert.Equal("Collect the number before noon.", noted.Week![Eve].Note);
        Assert.Equal(plan.Days, noted.Days);
        Assert.Equal(
            plan.Week!.Days.Where(d => d.Date != Eve),
            noted.Week.Days.Where(d => d.Date != Eve)
        );
        Assert.Same(plan.Week.Morning, noted.Week.Morning);
    }

    [Fact]
    public void Travel_moves_the_meals_off_the_road_and_home_puts_them_back()
    {
        var plan = SampleWeek.Plan();
        var travelling = plan.Travelling(Eve, AfternoonTrain);
        var times = travelling[Eve].Occasions.Select(o => o.Time).ToList();
        Assert.DoesNotContain(times, t => t > AfternoonTrain.From && t < AfternoonTrain.To);
        Assert.Equal(times.Order(), times);
        Assert.Equal(times.Count, times.Distinct().Count());
        Assert.Equal(
            plan[Eve].Occasions.Select(o => o.CarbohydrateAimG),
            travelling[Eve].Occasions.Select(o => o.CarbohydrateAimG)
        );
        Assert.Equal(plan[Eve], travelling.Travelling(Eve, null)[Eve]);
    }

    [Theory]
    [InlineData(5, 9)]
    [InlineData(9, 13)]
    [InlineData(10, 20)]
    [InlineData(14, 23)]
    public void Meals_keep_their_order_whatever_the_journey(int leaves, int arrives)
    {
        var travel = new Travel(new LocalTime(leaves, 0), new LocalTime(arrives, 0));
        var times = TravelShift
            .Apply(SampleWeek.Plan()[Eve].Occasions, travel)
            .Select(o => o.Time)
            .ToList();
        Assert.Equal(times.Order(), times);
        Assert.Equal(times.Count, times.Distinct().Count());
        Assert.DoesNotContain(times, t => t > travel.From && t < travel.To);
        Assert.InRange(times[0], new LocalTime(5, 0), new LocalTime(12, 0));
    }

    [Fact]
    public void Nobody_arrives_before_leaving() =>
        Assert.Throws<ArgumentException>(() =>
            SampleWeek
                .Plan()
                .Travelling(Eve, new Travel(new LocalTime(17, 0), new LocalTime(12, 0)))
        );

    [Fact]
    public void Meals_of_the_race_day_are_edited_like_those_of_any_day()
    {
        var plan = SampleWeek.Plan();
        var honey = FoodLibrary.Standard.All.First(f =>
            f.Roles.Any(r => r.Role == MealRole.Spread)
        );
        var portion = Portion.Of(honey, MealRole.Spread, honey.Serving.Steps[0]);
        var edited = plan.EditPart(
            RaceDayPart.Morning,
            p => p.Add(SampleWeek.Start.Date, OccasionKind.Breakfast, portion)
        );
        Assert.NotNull(edited.Week!.Morning[OccasionKind.Breakfast].Find(honey.Id));
        Assert.Equal(plan.Days, edited.Days);
        Assert.Equal(plan.Week!.Recovery, edited.Week.Recovery);
    }

    [Fact]
    public void A_week_laid_out_anew_keeps_what_a_hand_wrote()
    {
        var edited = SampleWeek
            .Plan()
            .Note(Eve, "Number")
            .Note(RaceDayPart.Morning, "Room service knows")
            .Travelling(Eve, AfternoonTrain)
            .Pack(Packing.Food, "Rice cooker");
        var anew = SampleWeek.Plan().EditWeek(w => w.Keeping(edited.Week));
        Assert.Equal(("Number", AfternoonTrain), (anew.Week![Eve].Note, anew.Week[Eve].Travel));
        Assert.Equal("Room service knows", anew.Week.MorningNote);
        Assert.Single(anew.Week.Packing, p => p.What == "Rice cooker");
    }

    [Fact]
    public void A_plan_without_a_week_is_left_as_it_is()
    {
        var plan = SampleWeek.Plan() with { Week = null };
        Assert.Same(plan, plan.Note(Eve, "Number"));
        Assert.Equal(plan.Days, plan.EveryDay);
    }
}
