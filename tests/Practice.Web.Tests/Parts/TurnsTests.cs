using Practice.Web.Parts.Saving;

namespace Practice.Web.Tests.Parts;

public class TurnsTests
{
    [Fact]
    public async Task Works_run_one_after_another_in_the_order_they_were_asked_for()
    {
        var turns = new Turns();
        var first = new TaskCompletionSource();
        List<string> done = [];
        var one = turns.Next(async () =>
        {
            await first.Task;
            done.Add("first");
        });
        var two = turns.Next(() =>
        {
            done.Add("second");
            return Task.CompletedTask;
        });

        Assert.Empty(done);
        first.SetResult();
        await Task.WhenAll(one, two);
        Assert.Equal(["first", "second"], done);
    }

    [Fact]
    public async Task A_work_that_fails_tells_who_asked_for_it_and_nobody_after()
    {
        var turns = new Turns();
        var failing = turns.Next(() => throw new InvalidOperationException("no"));
        var hasRun = false;
        await turns.Next(() =>
        {
            hasRun = true;
            return Task.CompletedTask;
        });

        Assert.True(hasRun);
        await Assert.ThrowsAsync<InvalidOperationException>(() => failing);
    }
}
