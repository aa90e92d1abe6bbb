using Practice.Benchmarks;
using Practice.Domain.Foods;
using Practice.Domain.Plans;
using Practice.Planner.Model;
using Practice.Planner.Search;

namespace Practice.Domain.Tests.Planner;

public sealed class BuildTests
{
    [Fact]
    public async Task The_same_request_gives_the_same_menu_also_when_the_machine_is_busy()
    {
        var request = Sample.Eve();

        var alone = Sample.Quick(request);
        var crowd = await Task.WhenAll(
            Enumerable.Range(0, 3).Select(_ => Task.Run(() => Sample.Quick(request)))
        );

        Assert.All(crowd, menu => Assert.Equal(alone.Days, menu.Days));
        Assert.All(crowd, menu => Assert.Equal(alone.Cost, menu.Cost));
    }

    [Fact]
    public void Another_seed_gives_another_menu()
    {
        var request = Sample.Eve();

        var other = Sample.Quick(request with { Seed = request.Seed + 1 });

        Assert.NotEqual(Sample.FilledEve.Days, other.Days);
        Assert.Empty(other.Shortfalls);
    }

    [Fact]
    public void A_build_that_is_cancelled_returns_the_best_menu_so_far()
    {
        using var cancel = new CancellationTokenSource();
        var reported = new List<MenuProgress>();
        var progress = new Reports(report =>
        {
            reported.Add(report);
            if (report.Days is not null)
                cancel.Cancel();
        });

        var menu = Sample.Planner.Build(Sample.Eve(), progress, cancel.Token);

        Assert.True(menu.WasCancelled);
        Assert.Equal(reported.Last(r => r.Days is not null).Days!.Value, menu.Days);
        Assert.All(menu.Days[0].Occasions, o => Assert.NotEmpty(o.Portions));
    }

    [Fact]
    public void A_build_that_is_cancelled_before_it_began_still_returns_days()
    {
        var request = Sample.Eve();

        var menu = Sample.Planner.Build(request, null, new CancellationToken(canceled: true));

        Assert.True(menu.WasCancelled);
        Assert.Equal(request.Days[0].Occasions.Length, menu.Days[0].Occasions.Length);
    }

    [Fact]
    public void Menus_reported_on_the_way_get_better_and_never_worse()
    {
        var costs = new List<double>();
        var progress = new Reports(report =>
        {
            if (report.Days is not null)
                costs.Add(report.Cost);
        });

        var menu = MenuBuild.Of(Sample.Eve(), progress, CancellationToken.None, solves: 6);

        Assert.NotEmpty(costs);
        Assert.Equal(costs.OrderDescending(), costs);
        Assert.Equal(menu.Cost, costs[^1]);
    }

    [Fact]
    public void Progress_is_told_all_the_way_and_never_goes_back()
    {
        var told = new List<double>();
        var progress = new Reports(report => told.Add(report.Fraction));

        MenuBuild.Of(Sample.Eve(), progress, CancellationToken.None, solves: 6);

        Assert.Equal(told.Order(), told);
        Assert.Equal(1, told[^1], 1e-9);
        Assert.All(told.Zip(told.Skip(1), (a, b) => b - a), step => Assert.True(step < 0.35));
    }

    [Fact]
    public void Locked_portions_stay_as_they_are_even_where_they_make_an_odd_meal()
    {
        var request = Sample.Eve();
        var honey = Locked(request, "honey", MealRole.Spread, 3);
        var pasta = Locked(request, "white-pasta", MealRole.Pasta, 5);
        var locked = request
            .With(OccasionKind.Breakfast, o => o with { Portions = [pasta] })
            .With(OccasionKind.MorningSnack, o => o with { Portions = [honey] });

        var menu = Sample.Quick(locked);

        Assert.Contains(pasta, menu.Days[0][OccasionKind.Breakfast].Portions);
        Assert.Contains(honey, menu.Days[0][OccasionKind.MorningSnack].Portions);
        Assert.True(menu.Days[0][OccasionKind.MorningSnack].Portions.Length > 1);
    }

    [Fact]
    public void A_locked_food_that_the_client_may_no_longer_eat_is_taken_out_and_said()
    {
        var request = Sample.Eve();
        var honey = Locked(request, "honey", MealRole.Spread, 2);
        var withdrawn = request.With(OccasionKind.Supper, o => o with { Portions = [honey] }) with
        {
            Foods = request.Foods.RemoveAll(f => f.Id == "honey"),
        };

        var menu = Sample.Quick(withdrawn);

        Assert.DoesNotContain(
            menu.Days[0].Occasions.SelectMany(o => o.Portions),
            p => p.FoodId == "honey"
        );
        Assert.Contains(menu.Shortfalls, s => s.Text.Contains("Honey", StringComparison.Ordinal));
    }

    [Fact]
    public void With_no_food_at_all_the_plates_stay_empty_and_the_shortfalls_say_so()
    {
        var menu = Sample.Quick(Sample.Eve() with { Foods = [] });

        Assert.All(menu.Days[0].Occasions, o => Assert.Empty(o.Portions));
        Assert.Contains(menu.Shortfalls, s => s.Kind == LimitKind.DayCarbohydrate);
    }

    [Fact]
    public void Annealing_and_the_model_agree_on_what_a_menu_costs()
    {
        var model = MenuModel.ToFill(GeneratedClients.Of(7).Request);
        var annealing = new Annealing(model, MealPool.For(model, CancellationToken.None));
        annealing.Run(300_000, 15_000, 1, CancellationToken.None);
        var values = new long[model.Variables.Count];
        foreach (var (variable, value) in annealing.Picked.SelectMany(m => m.Values))
            values[variable] = value;

        Assert.Equal(model.CostOf(values), annealing.Cost);
    }

    private static Portion Locked(MenuRequest request, string id, MealRole role, int steps) =>
        Portion.Of(request.Foods.Single(f => f.Id == id), role, steps) with
        {
            IsLocked = true,
        };

    private sealed class Reports(Action<MenuProgress> act) : IProgress<MenuProgress>
    {
        public void Report(MenuProgress value) => act(value);
    }
}
