using NodaTime;
using Practice.Domain.Clients;
using Practice.Domain.Foods;
using Practice.Domain.Plans;
using Practice.Domain.Plans.Weeks;
using Practice.Domain.Quantities;
using Practice.Domain.Screening;
using Practice.Domain.Targets;
using Practice.Domain.Tests.Plans;

namespace Practice.Domain.Tests.Planner;

/// <summary>The planner fills the meals of the race day within their limits.</summary>
public sealed class RaceDayMenusTests
{
    private static readonly LocalDateTime Nine = new(2027, 4, 18, 9, 0);

    public static TheoryData<decimal, DietPattern, bool> Cases =>
        new()
        {
            { 52, DietPattern.Omnivore, false },
            { 70, DietPattern.Omnivore, false },
            { 95, DietPattern.Omnivore, false },
            { 60, DietPattern.Vegan, false },
            { 70, DietPattern.Vegetarian, true },
        };

    [Theory]
    [MemberData(nameof(Cases))]
    public void Race_morning_keeps_its_limits(decimal kg, DietPattern pattern, bool noGluten)
    {
        var menu = Solve(
            kg,
            RaceMorning.Layout(
                Nine,
                BodyMass.OfKilograms(kg),
                SampleTargets.At(10 * kg),
                Adjustments.None
            ),
            pattern,
            noGluten
        );
        Assert.Empty(menu.Shortfalls.Select(s => s.Text));
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Recovery_keeps_its_limits(decimal kg, DietPattern pattern, bool noGluten)
    {
        var menu = Solve(
            kg,
            Recovery.Layout(Nine.PlusHours(4), BodyMass.OfKilograms(kg), Adjustments.None),
            pattern,
            noGluten
        );
        Assert.Empty(menu.Shortfalls.Select(s => s.Text));
    }

    [Theory]
    [InlineData(5, 30)]
    [InlineData(11, 0)]
    [InlineData(15, 0)]
    public void So_does_the_morning_of_an_early_and_of_a_late_start(int hour, int minute)
    {
        var start = Nine.Date.At(new LocalTime(hour, minute));
        var mass = BodyMass.OfKilograms(70);
        var menu = Solve(
            70,
            RaceMorning.Layout(start, mass, SampleTargets.At(700), Adjustments.None),
            DietPattern.Omnivore,
            noGluten: false
        );
        Assert.Empty(menu.Shortfalls.Select(s => s.Text));
    }

    private static MenuResult Solve(decimal kg, PlanDay day, DietPattern pattern, bool noGluten)
    {
        var diet = new Diet
        {
            Pattern = pattern,
            Allergies = noGluten
                ? [Allergen.Wheat, Allergen.Barley, Allergen.Rye, Allergen.Oats]
                : [],
        };
        var request = new MenuRequest
        {
            BodyMass = BodyMass.OfKilograms(kg),
            Days = [day],
            Foods = EligibleFoods
                .For(FoodLibrary.Standard, diet, Tastes.Unknown, Adjustments.None)
                .Allowed,
        };
        return Sample.Quick(request);
    }
}
