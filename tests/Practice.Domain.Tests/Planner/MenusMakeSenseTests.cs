using Practice.Benchmarks;
using Practice.Domain.Clients;
using Practice.Domain.Foods;
using Practice.Domain.Plans;

namespace Practice.Domain.Tests.Planner;

public sealed class MenusMakeSenseTests
{
    public static TheoryData<int> Seeds => [.. Enumerable.Range(101, 8)];

    [Theory]
    [MemberData(nameof(Seeds))]
    public void A_dietitian_has_no_complaint_and_no_food_comes_from_outside_the_request(int seed)
    {
        var request = GeneratedClients.Of(seed).Request;

        var menu = Sample.Quick(request);

        Assert.Empty(MenuReading.Complaints(request, menu.Days));
        Assert.Empty(menu.Shortfalls);
        var allowed = request.Foods.Select(f => f.Id).ToHashSet();
        Assert.All(
            menu.Days.SelectMany(d => d.Occasions).SelectMany(o => o.Portions),
            p => Assert.Contains(p.FoodId, allowed)
        );
    }

    [Fact]
    public void A_vegan_with_coeliac_disease_is_fed_within_the_limits()
    {
        var request = Sample.Eve(
            new Diet { Pattern = DietPattern.Vegan },
            GeneratedClients.Adjusted(isCoeliac: true, avoidsLactose: false)
        );

        var menu = Sample.Quick(request);

        Assert.Empty(MenuReading.Complaints(request, menu.Days));
        Assert.Empty(menu.Shortfalls);
    }

    [Fact]
    public void Stand_ins_are_not_served_to_one_who_can_have_the_original()
    {
        var menu = Sample.FilledEve;

        Assert.DoesNotContain(Foods(menu), food => food.Is(FoodTraits.Substitute));
    }

    [Fact]
    public void A_main_meal_has_a_protein_food()
    {
        var eve = Sample.FilledEve.Days[0];

        Assert.All(
            [eve[OccasionKind.Lunch], eve[OccasionKind.EveningMeal]],
            meal => Assert.True(meal.Totals.ProteinG >= 10, MenuText.Of(eve))
        );
    }

    [Fact]
    public void What_a_client_likes_is_served()
    {
        var likes = new[] { "white-rice", "banana", "honey", "white-toast", "chicken-breast" };
        var request = Sample.Eve(tastes: Tastes.Unknown with { Likes = [.. likes] });

        var menu = Sample.Filled(request);

        Assert.True(Foods(menu).Select(f => f.Id).Intersect(likes).Count() >= 3);
    }

    private static IEnumerable<Food> Foods(MenuRequest menu) =>
        from day in menu.Days
        from occasion in day.Occasions
        from portion in occasion.Portions
        select menu.Foods.Single(f => f.Id == portion.FoodId);
}
