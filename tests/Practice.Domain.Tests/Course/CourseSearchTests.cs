using Practice.Domain.Course;
using Practice.Planner.Course;
using Practice.Planner.Model;

namespace Practice.Domain.Tests.Course;

public class CourseSearchTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_beam_that_leaves_nothing_out_finds_what_trying_everything_finds(bool fromFinish)
    {
        var model = new CourseModel(Short.Case);
        var beam = new CourseBeam(model, fromFinish).Run(100_000, long.MaxValue, Cancel);
        Assert.True(beam.IsProven);
        Assert.Equal(CheapestOfAll(model), model.CostOf(beam.Counts!));
    }

    [Fact]
    public void A_beam_finds_nothing_below_the_best()
    {
        var model = new CourseModel(Short.Case);
        var beam = new CourseBeam(model, fromFinish: false).Run(
            100_000,
            CheapestOfAll(model),
            Cancel
        );
        Assert.Null(beam.Counts);
        Assert.True(beam.IsProven);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void Changes_from_nothing_end_near_the_best_and_break_no_hard_row(int seed)
    {
        var model = new CourseModel(Marathon.In(225).Case);
        var counts = new CoursePolish(model, new long[model.Offers.Length]).Run(
            300_000,
            seed,
            Cancel
        );
        var best = new CourseSearch(model, null).Run(CourseEffort.Usual, Cancel).Cost;
        Assert.InRange(model.CostOf(counts), best, 1.5 * best);
        Assert.All(
            model.Rows.Where(r => r.IsHard),
            r => Assert.InRange(r.SumOf(counts), r.Low, r.High)
        );
    }

    [Fact]
    public void Each_schedule_told_is_better_than_the_one_before()
    {
        var told = new Told();
        var last = new CourseScheduler().Schedule(Marathon.In(225).Case, told, Cancel);
        Assert.True(told.Costs.Count > 1);
        Assert.Equal(told.Costs.OrderDescending().Distinct(), told.Costs);
        Assert.Equal(last.Cost, told.Costs[^1]);
    }

    [Fact]
    public async Task Who_does_not_wait_gets_the_best_so_far()
    {
        using var enough = new CancellationTokenSource();
        var told = new Told { Enough = enough };
        var best = await Task.Run(
            () => new CourseScheduler().Schedule(Marathon.In(225).Case, told, enough.Token),
            Cancel
        );
        Assert.Equal(Assert.Single(told.Costs), best.Cost);
        Assert.NotEmpty(best.Steps);
    }

    // a race of an hour with two tables on the way: few enough choices to try them all
    private static Marathon Short =>
        Marathon
            .In(60)
            .On(s =>
                s with
                {
                    Profile = CourseProfile.Typed(12),
                    Products =
                    [
                        .. s.Products.Where(p =>
                            p.Id is Product.WaterId or "gel-isotonic" or "gel"
                        ),
                    ],
                }
            )
            .On(s => s.WithStations([new(5, [Product.WaterId]), new(8, [Product.WaterId])]));

    private static long CheapestOfAll(CourseModel model)
    {
        var counts = new long[model.Offers.Length];
        var cheapest = long.MaxValue;
        for (var i = 0; i < counts.Length; )
        {
            cheapest = Math.Min(cheapest, model.CostOf(counts));
            for (i = 0; i < counts.Length && counts[i] == model.Offers[i].Most; i++)
                counts[i] = 0;
            if (i < counts.Length)
                counts[i]++;
        }
        return cheapest;
    }

    private sealed class Told : IProgress<CourseSchedule>
    {
        public CancellationTokenSource? Enough { get; init; }

        public List<double> Costs { get; } = [];

        public void Report(CourseSchedule value)
        {
            Costs.Add(value.Cost);
            Enough?.Cancel();
        }
    }
}
