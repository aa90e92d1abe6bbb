using System.Collections.Immutable;
using Practice.Benchmarks;
using Practice.Domain.Clients;
using Practice.Domain.Plans;
using Practice.Domain.Screening;

namespace Practice.Domain.Tests.Planner;

public sealed class ExplainTests
{
    [Fact]
    public void Nothing_is_explained_where_a_menu_keeps_all_limits()
    {
        Assert.Empty(
            Sample.Planner.Explain(Sample.FilledEve, TestContext.Current.CancellationToken)
        );
    }

    [Fact]
    public void Limits_that_clash_are_named_and_the_least_change_is_certain()
    {
        var vegan = Morning(
            new Diet { Pattern = DietPattern.Vegan },
            GeneratedClients.Adjusted(isCoeliac: true, avoidsLactose: false)
        );
        var request = Limited(vegan, l => l with { FibreMaxG = 1, ProteinMinG = 40 });

        var conflict = Assert.Single(
            Sample.Planner.Explain(request, TestContext.Current.CancellationToken)
        );

        Assert.True(conflict.Proven);
        Assert.Contains(LimitKind.Fibre, conflict.Kinds);
        Assert.Contains("Saturday", conflict.Text, StringComparison.Ordinal);
        var fibre = conflict.Relaxations.Single(r => r.Kind == LimitKind.Fibre);
        Assert.InRange(fibre.Certain!.Value, 1, fibre.To);
        Assert.StartsWith("Raise fibre on Saturday to", fibre.Text, StringComparison.Ordinal);
        Assert.Contains("is certain", fibre.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_offered_works()
    {
        var request = Limited(Morning(), l => l with { FibreMaxG = 0.5m });
        var conflict = Assert.Single(
            Sample.Planner.Explain(request, TestContext.Current.CancellationToken)
        );
        var fibre = conflict.Relaxations.Single(r => r.Kind == LimitKind.Fibre);

        var relaxed = Limited(request, l => l with { FibreMaxG = fibre.To });

        Assert.Empty(Sample.Planner.Explain(relaxed, TestContext.Current.CancellationToken));
    }

    [Fact]
    public void A_target_out_of_reach_is_named_with_what_can_be_reached()
    {
        var request = Limited(Morning(), l => l with { OccasionWeightMaxG = 150 });

        var conflict = Assert.Single(
            Sample.Planner.Explain(request, TestContext.Current.CancellationToken)
        );

        Assert.Contains(LimitKind.OccasionWeight, conflict.Kinds);
        Assert.NotEmpty(conflict.Relaxations);
    }

    [Fact]
    public void Where_no_single_change_helps_what_the_closest_menu_needs_is_offered()
    {
        var request = Limited(Morning(), l => l with { FibreMaxG = 0.5m, FatMaxG = 0.5m });

        var conflict = Assert.Single(
            Sample.Planner.Explain(request, TestContext.Current.CancellationToken)
        );

        Assert.True(conflict.Proven);
        Assert.Contains("closest menu misses", conflict.Text, StringComparison.Ordinal);
        Assert.Contains(conflict.Relaxations, r => r.Kind == LimitKind.Fibre);
        Assert.Contains(conflict.Relaxations, r => r.Kind == LimitKind.Fat);
    }

    [Fact]
    public void Nothing_is_called_impossible_when_asking_was_cut_short()
    {
        var request = Limited(Morning(), l => l with { FibreMaxG = 0.5m });

        Assert.Empty(Sample.Planner.Explain(request, new CancellationToken(canceled: true)));
    }

    /// <summary>Half a day: as hard to explain as a whole one, in a fraction of the time.</summary>
    private static MenuRequest Morning(Diet? diet = null, Adjustments? adjustments = null)
    {
        var request = Sample.Eve(diet, adjustments);
        var day = request.Days[0];
        var sittings = day.Occasions.Take(3).ToImmutableArray();
        return Limited(
            request with
            {
                Days = [day with { Occasions = sittings }],
            },
            l =>
                l with
                {
                    CarbohydrateAimG = sittings.Sum(o => o.CarbohydrateAimG),
                    ProteinMinG = 0,
                    SodiumMinMg = 0,
                }
        );
    }

    private static MenuRequest Limited(MenuRequest request, Func<DayLimits, DayLimits> change) =>
        request with
        {
            Days = [request.Days[0] with { Limits = change(request.Days[0].Limits) }],
        };
}
