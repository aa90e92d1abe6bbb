using Practice.Benchmarks;
using Practice.Domain.Plans;
using Practice.Planner;

namespace Practice.Domain.Tests.Planner;

public sealed class MenuPlannerTests
{
    private static readonly MenuPlanner Planner = new();

    [Fact]
    public void The_same_request_gives_the_same_menu()
    {
        var request = GeneratedClients.Of(5).Request;

        var first = Planner.Build(request, null, TestContext.Current.CancellationToken);
        var second = Planner.Build(request, null, TestContext.Current.CancellationToken);

        Assert.Equal(first.Days, second.Days);
        Assert.Equal(first.Cost, second.Cost);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void A_menu_keeps_all_limits_and_uses_only_foods_of_the_request(int seed)
    {
        var request = GeneratedClients.Of(seed).Request;

        var menu = Planner.Build(request, null, TestContext.Current.CancellationToken);

        Assert.Empty(menu.Shortfalls);
        var allowed = request.Foods.Select(f => f.Id).ToHashSet();
        Assert.All(
            menu.Days.SelectMany(d => d.Occasions).SelectMany(o => o.Portions),
            p => Assert.Contains(p.FoodId, allowed)
        );
    }
}
