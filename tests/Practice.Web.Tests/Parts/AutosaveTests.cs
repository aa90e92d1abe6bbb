using NodaTime;
using Practice.Domain.Caseload;
using Practice.Web.Parts.Notices;
using Practice.Web.Parts.Saving;

namespace Practice.Web.Tests.Parts;

public class AutosaveTests
{
    private static readonly LocalTime Noon = new(12, 0);

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_run_of_changes_is_one_save()
    {
        var saves = 0;
        var autosave = Saving(version =>
        {
            saves++;
            return Saved(version);
        });
        await Task.WhenAll(autosave.Soon(Cancel), autosave.Soon(Cancel), autosave.Soon(Cancel));
        Assert.Equal(1, saves);
        Assert.Equal((SaveStanding.Saved, Noon), (autosave.Standing, autosave.SavedAt));
    }

    [Fact]
    public async Task A_slow_save_is_waited_for_and_the_next_goes_on_from_it()
    {
        var slow = new TaskCompletionSource();
        List<uint> handedBack = [];
        var autosave = Saving(async version =>
        {
            handedBack.Add(version.Version);
            if (handedBack.Count == 1)
                await slow.Task;
            return await Saved(version);
        });
        var first = autosave.Now();
        var second = autosave.Now();
        Assert.Equal([1u], handedBack);
        slow.SetResult();
        await Task.WhenAll(first, second);
        Assert.Equal([1u, 2u], handedBack);
        Assert.Null(autosave.Theirs);
    }

    [Fact]
    public async Task What_changes_while_it_is_saved_is_not_called_saved()
    {
        var slow = new TaskCompletionSource();
        var saves = 0;
        var autosave = Saving(async version =>
        {
            if (++saves == 1)
                await slow.Task;
            return await Saved(version);
        });
        var first = autosave.Now();
        var second = autosave.Soon(Cancel);
        slow.SetResult();
        await first;
        Assert.Equal(SaveStanding.Saving, autosave.Standing);
        await second;
        Assert.Equal((SaveStanding.Saved, 2), (autosave.Standing, saves));
    }

    [Fact]
    public async Task What_is_left_within_the_moment_is_saved_at_once()
    {
        using var leaving = new CancellationTokenSource();
        var saves = 0;
        var autosave = Saving(version =>
        {
            saves++;
            return Saved(version);
        });
        var saving = autosave.Soon(leaving.Token);
        await leaving.CancelAsync();
        await saving;
        Assert.Equal(1, saves);
    }

    [Fact]
    public async Task What_somebody_else_saved_is_told_and_can_be_gone_on_from()
    {
        var theirs = new OnFile<string>("theirs", 7);
        var autosave = Saving(_ =>
            Task.FromResult<SaveOutcome<string>>(new Conflict<string>(theirs))
        );
        await autosave.Now();
        Assert.Equal((SaveStanding.NotSaved, theirs), (autosave.Standing, autosave.Theirs));
        Assert.Equal("theirs", autosave.TakeTheirs());
        Assert.Equal(theirs, autosave.OnFile);
        Assert.Null(autosave.Theirs);
    }

    [Fact]
    public async Task A_database_that_does_not_answer_loses_nothing_and_can_be_tried_again()
    {
        var tries = 0;
        var autosave = Saving(version =>
            ++tries == 1 ? throw new TimeoutException() : Saved(version)
        );
        await autosave.Now();
        Assert.Equal(SaveStanding.NotSaved, autosave.Standing);
        await autosave.Now();
        Assert.Equal(SaveStanding.Saved, autosave.Standing);
    }

    private static Autosave<string> Saving(Func<OnFile<string>, Task<SaveOutcome<string>>> save) =>
        new(new OnFile<string>("ours", 1), save, () => Noon);

    private static Task<SaveOutcome<string>> Saved(OnFile<string> version) =>
        Task.FromResult<SaveOutcome<string>>(
            new Saved<string>(version with { Version = version.Version + 1 })
        );
}
