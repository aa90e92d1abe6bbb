namespace Practice.Web.Parts.Saving;

/// <summary>Lets works run one after another, in the order they were asked for, whatever becomes of each.</summary>
internal sealed class Turns
{
    private Task before = Task.CompletedTask;

    /// <summary>Runs a work once all that were asked for before it have ended.</summary>
    public async Task Next(Func<Task> work)
    {
        var (earlier, mine) = (before, new TaskCompletionSource());
        before = mine.Task;
        await earlier;
        try
        {
            await work();
        }
        finally
        {
            mine.SetResult();
        }
    }
}
